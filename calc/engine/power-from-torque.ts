import { explicit } from "../relation/relation.ts";

/**
 * Brake power in W from the torque M in N m and the speed n in rev/s.
 *
 * @example powerFromTorque.compute({ n: 50, M: 800 }) // 251 327 W
 */
export const powerFromTorque = explicit({
  id: "engine/power-from-torque",
  title: "Power from torque",
  inputs: {
    n: { symbol: "n", kind: "rotationalSpeed" },
    M: { symbol: "M", kind: "torque" },
  },
  result: { symbol: "W_e", kind: "power" },
  expression: "2 * pi * n * M",
  sources: [{ key: "heywood", where: "chapter 2, brake torque and power", standing: "from memory" }],
  compute: ({ n, M }) => 2 * Math.PI * n * M,
});
