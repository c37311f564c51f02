import { explicit } from "../relation/relation.ts";

/**
 * Torque in N m from the brake power in W and the speed in rev/s.
 *
 * @example torqueFromPower.compute({ W_e: 235e3, n: 6500 / 60 }) // 345.2 N m
 */
export const torqueFromPower = explicit({
  id: "engine/torque-from-power",
  title: "Torque from power",
  inputs: {
    W_e: { symbol: "W_e", kind: "power" },
    n: { symbol: "n", kind: "rotationalSpeed" },
  },
  result: { symbol: "M", kind: "torque" },
  expression: "W_e / (2 * pi * n)",
  sources: [{ key: "heywood", where: "chapter 2, brake torque and power", standing: "from memory" }],
  compute: ({ W_e, n }) => W_e / (2 * Math.PI * n),
});
