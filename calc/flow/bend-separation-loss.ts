import { explicit } from "../relation/relation.ts";

/**
 * The part of a smooth bend's loss coefficient that comes from flow leaving the inner wall: large in a tight bend. theta in rad,
 * R_b radius to the centre line over the bore.
 *
 * @example bendSeparationLoss.compute({ f: 0.018, theta: 1.5708, R_b: 1.5 }) // 0.08173
 */
export const bendSeparationLoss = explicit({
  id: "flow/bend-separation-loss",
  title: "Bend: flow that leaves the wall",
  inputs: {
    f: { symbol: "f", kind: "ratio" },
    theta: { symbol: "theta", kind: "angle" },
    R_b: { symbol: "R_b", kind: "ratio" },
  },
  result: { symbol: "K_sep", kind: "ratio" },
  expression: "6.6 * f / R_b^(4 * theta / pi) * (sqrt(sin(theta / 2)) + sin(theta / 2))",
  sources: [
    { key: "fluids", where: "fittings, rounded bend", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "bends, flow separation", standing: "from memory" },
  ],
  ranges: [
    {
      input: "R_b",
      from: 0.5,
      to: 20,
      says: "The formula for bends was checked for radii within the bound.",
    },
  ],
  compute: ({ f, theta, R_b }) =>
    (6.6 * f * (Math.sqrt(Math.sin(theta / 2)) + Math.sin(theta / 2))) / R_b ** ((4 * theta) / Math.PI),
});
