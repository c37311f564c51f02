import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of two pipes joined at an angle without a radius; theta in rad.
 *
 * @example mitreLoss.compute({ theta: 1.5708 }) // 1.2021
 */
export const mitreLoss = explicit({
  id: "flow/mitre-loss",
  title: "Loss coefficient of a mitre bend",
  inputs: {
    theta: { symbol: "theta", kind: "angle" },
  },
  result: { symbol: "K_1", kind: "ratio" },
  expression: "0.42 * sin(theta / 2) + 2.56 * sin(theta / 2)^3",
  sources: [
    { key: "fluids", where: "fittings, mitre bend", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "mitre bends", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ theta }) => 0.42 * Math.sin(theta / 2) + 2.56 * Math.sin(theta / 2) ** 3,
});
