import { explicit } from "../relation/relation.ts";

/**
 * Total pressure in Pa that a bend, an entrance or any other part takes: its loss coefficient times the dynamic pressure of the
 * speed c in m/s to which the coefficient belongs. Density in kg/m³.
 *
 * @example fittingLoss.compute({ K: 0.3, rho: 2, c: 38.6 }) // 447 Pa
 */
export const fittingLoss = explicit({
  id: "flow/fitting-loss",
  title: "Loss of a fitting",
  inputs: {
    K: { symbol: "K", kind: "ratio" },
    rho: { symbol: "rho", kind: "density" },
    c: { symbol: "c", kind: "speed" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "K * (rho * c^2 / 2)",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, minor losses in pipes", standing: "from memory" },
  ],
  compute: ({ K, rho, c }) => (K * rho * c ** 2) / 2,
});
