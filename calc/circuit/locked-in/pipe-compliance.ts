import { explicit } from "../../relation/relation.ts";

/**
 * What of its volume a closed thin pipe gains with each Pa inside, 1/Pa: bore d and wall t_w in m, modulus of elasticity in Pa and
 * transverse contraction nu of the material.
 *
 * @example pipeCompliance.compute({ d: 0.0525, t_w: 0.0039, E_m: 205e9, nu_m: 0.3 }) // 6.2383e-11 per Pa
 */
export const pipeCompliance = explicit({
  id: "circuit/locked-in/pipe-compliance",
  title: "How a pipe gives way to pressure",
  inputs: {
    d: { symbol: "d", kind: "length" },
    t_w: { symbol: "t_w", kind: "length" },
    E_m: { symbol: "E_m", kind: "modulus" },
    nu_m: { symbol: "nu_m", kind: "ratio" },
  },
  result: { symbol: "chi_V", kind: "compliance" },
  expression: "d / (t_w * E_m) * (5 / 4 - nu_m)",
  working: "si",
  sources: [
    {
      key: "timoshenko-strength-2",
      where: "thin closed cylinder: both stresses and both strains",
      standing: "derived here",
    },
  ],
  compute: ({ d, t_w, E_m, nu_m }) => (d / (t_w * E_m)) * (1.25 - nu_m),
});
