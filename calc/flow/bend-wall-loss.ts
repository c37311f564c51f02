import { explicit } from "../relation/relation.ts";

/**
 * The part of a smooth bend's loss coefficient that comes from friction along it and from the cross-flow that the bend stirs up.
 * theta in rad, R_b radius to the centre line over the bore.
 *
 * @example bendWallLoss.compute({ f: 0.018, theta: 1.5708, R_b: 1.5 }) // 0.14367
 */
export const bendWallLoss = explicit({
  id: "flow/bend-wall-loss",
  title: "Bend: wall and cross-flow",
  inputs: {
    f: { symbol: "f", kind: "ratio" },
    theta: { symbol: "theta", kind: "angle" },
    R_b: { symbol: "R_b", kind: "ratio" },
  },
  result: { symbol: "K_w", kind: "ratio" },
  expression: "f * theta * R_b + (0.1 + 2.4 * f) * sin(theta / 2)",
  sources: [
    { key: "fluids", where: "fittings, rounded bend", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "bends, friction and secondary flow", standing: "from memory" },
  ],
  compute: ({ f, theta, R_b }) => f * theta * R_b + (0.1 + 2.4 * f) * Math.sin(theta / 2),
});
