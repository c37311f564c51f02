import { explicit } from "../relation/relation.ts";

/**
 * Total pressure in Pa that friction takes in a straight pipe of length L and bore d in m, at one density in kg/m³ and speed in
 * m/s; f is Darcy's friction factor.
 *
 * @example pipeLoss.compute({ f: 0.018, L: 3, d: 0.076, rho: 2, c: 38.6 }) // 1059 Pa
 */
export const pipeLoss = explicit({
  id: "flow/pipe-loss",
  title: "Loss by friction in a pipe",
  inputs: {
    f: { symbol: "f", kind: "ratio" },
    L: { symbol: "L", kind: "length" },
    d: { symbol: "d", kind: "length" },
    rho: { symbol: "rho", kind: "density" },
    c: { symbol: "c", kind: "speed" },
  },
  result: { symbol: "Delta_p_wall", kind: "pressureDifference" },
  expression: "f * L / d * (rho * c^2 / 2)",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, pressure loss in a pipe", standing: "from memory" },
  ],
  compute: ({ f, L, d, rho, c }) => (((f * L) / d) * rho * c ** 2) / 2,
});
