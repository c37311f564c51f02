import { explicit } from "../relation/relation.ts";

/**
 * Prandtl number of a fluid: how fast it evens out speed over how fast it evens out temperature. About 0.7 in air, 1.7
 * to 13 in water. c_p in J/(kg K), mu in Pa s, k in W/(m K), each above zero.
 *
 * @example prandtlNumber.compute({ c_p: 1007, mu: 184.6e-7, k: 26.3e-3 }) // 0.7068
 */
export const prandtlNumber = explicit({
  id: "fluids/prandtl-number",
  title: "Prandtl number",
  inputs: {
    c_p: { symbol: "c_p", kind: "specificHeat" },
    mu: { symbol: "mu", kind: "viscosity" },
    k: { symbol: "k", kind: "conductivity" },
  },
  result: { symbol: "Pr", kind: "ratio" },
  expression: "c_p * mu / k",
  working: "si",
  sources: [{ key: "incropera-dewitt", where: "definition of the Prandtl number", standing: "from memory" }],
  compute: ({ c_p, mu, k }) => (c_p * mu) / k,
});
