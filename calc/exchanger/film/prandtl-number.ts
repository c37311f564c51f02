import { explicit } from "../../relation/relation.ts";

/**
 * Prandtl number of a fluid: heat capacity in J/(kg K), viscosity in Pa s, conductivity in W/(m K).
 *
 * @example prandtlNumber.compute({ c_p: 4182, mu: 1.002e-3, k: 0.598 }) // 7.007
 */
export const prandtlNumber = explicit({
  id: "exchanger/film/prandtl-number",
  title: "Prandtl number",
  inputs: {
    c_p: { symbol: "c_p", kind: "specificHeat" },
    mu: { symbol: "mu", kind: "viscosity" },
    k: { symbol: "k", kind: "conductivity" },
  },
  result: { symbol: "Pr", kind: "ratio" },
  expression: "c_p * mu / k",
  working: "si",
  sources: [{ key: "incropera-dewitt", where: "chapter 6, dimensionless numbers", standing: "from memory" }],

  compute: ({ c_p, mu, k }) => (c_p * mu) / k,
});
