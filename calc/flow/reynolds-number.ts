import { explicit } from "../relation/relation.ts";

/**
 * Reynolds number of the flow in a round pipe: density in kg/m³, speed in m/s, bore in m, viscosity in Pa s.
 *
 * @example reynoldsNumber.compute({ rho: 2, c: 38.6, d: 0.076, mu: 25e-6 }) // 234 688
 */
export const reynoldsNumber = explicit({
  id: "flow/reynolds-number",
  title: "Reynolds number in a pipe",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    c: { symbol: "c", kind: "speed" },
    d: { symbol: "d", kind: "length" },
    mu: { symbol: "mu", kind: "viscosity" },
  },
  result: { symbol: "Re", kind: "ratio" },
  expression: "rho * c * d / mu",
  working: "si",
  sources: [{ key: "white-fluid-mechanics", where: "chapter 6, flow in pipes", standing: "from memory" }],
  compute: ({ rho, c, d, mu }) => (rho * c * d) / mu,
});
