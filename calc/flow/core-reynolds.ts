import { explicit } from "../relation/relation.ts";

/**
 * Reynolds number of the flow in the passages of a core: mass flow per area G in kg/(m² s), hydraulic diameter in m,
 * viscosity in Pa s.
 *
 * @example coreReynolds.compute({ G: 16.8776, D_h: 2.4508e-3, mu: 22.83e-6 }) // 1811.8
 */
export const coreReynolds = explicit({
  id: "flow/core-reynolds",
  title: "Reynolds number in a core",
  inputs: {
    G: { symbol: "G", kind: "massFlux" },
    D_h: { symbol: "D_h", kind: "length" },
    mu: { symbol: "mu", kind: "viscosity" },
  },
  result: { symbol: "Re", kind: "ratio" },
  expression: "G * D_h / mu",
  working: "si",
  sources: [
    {
      key: "kays-london",
      where: "chapter 2, Reynolds number on the hydraulic diameter",
      standing: "from memory",
    },
  ],
  compute: ({ G, D_h, mu }) => (G * D_h) / mu,
});
