import { explicit } from "../relation/relation.ts";

/**
 * Engine speed in rev/s from the brake power in W and the torque in N m.
 *
 * @example speedFromPower.compute({ W_e: 235e3, M: 345.2 }) // 108.3 rev/s
 */
export const speedFromPower = explicit({
  id: "engine/speed-from-power",
  title: "Speed from power and torque",
  inputs: {
    W_e: { symbol: "W_e", kind: "power" },
    M: { symbol: "M", kind: "torque" },
  },
  result: { symbol: "n", kind: "rotationalSpeed" },
  expression: "W_e / (2 * pi * M)",
  sources: [{ key: "heywood", where: "chapter 2, brake torque and power", standing: "from memory" }],
  compute: ({ W_e, M }) => W_e / (2 * Math.PI * M),
});
