import { explicit } from "../relation/relation.ts";

/**
 * Darcy friction factor of turbulent flow in a round pipe without a search: within 1.5 % of flow/turbulent-friction-factor.
 * Roughness k_s and bore d in m.
 *
 * @example explicitFrictionFactor.compute({ Re: 1e5, k_s: 0.0076e-3, d: 0.076 }) // 0.018265
 */
export const explicitFrictionFactor = explicit({
  id: "flow/explicit-friction-factor",
  title: "Friction factor of turbulent flow, explicit",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    k_s: { symbol: "k_s", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "f", kind: "ratio" },
  expression: "(1.8 * log(6.9 / Re + (k_s / (3.7 * d))^1.11) / log(10))^(-2)",
  sources: [{ key: "haaland-1983", where: "explicit formula", standing: "from memory" }],
  ranges: [{ input: "Re", from: 4000, to: 1e8, says: "The formula is for turbulent flow within the bound." }],
  compute: ({ Re, k_s, d }) => ((1.8 * Math.log(6.9 / Re + (k_s / (3.7 * d)) ** 1.11)) / Math.LN10) ** -2,
});
