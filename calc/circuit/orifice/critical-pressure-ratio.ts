import { explicit } from "../../relation/relation.ts";

/**
 * Pressure over that before it at which a gas comes to the speed of sound in a nozzle; kappa is the heat-capacity ratio.
 *
 * @example criticalPressureRatio.compute({ kappa: 1.4 }) // 0.52828
 */
export const criticalPressureRatio = explicit({
  id: "circuit/orifice/critical-pressure-ratio",
  title: "Critical pressure ratio of a gas",
  inputs: {
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "r_crit", kind: "ratio" },
  expression: "(2 / (kappa + 1))^(kappa / (kappa - 1))",
  sources: [{ key: "white-fluid-mechanics", where: "chapter 9, isentropic flow", standing: "from memory" }],
  compute: ({ kappa }) => (2 / (kappa + 1)) ** (kappa / (kappa - 1)),
});
