import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a smooth bend of any angle from that of 90°, K_90: each further 90° adds half of it and the friction
 * along the arc. theta in rad, R_b radius to the centre line over the bore. Made for more than one bend of 90°: below, it does not
 * go to nothing with the angle.
 *
 * @example bendLossAtAngle.compute({ K_90: 0.2282, theta: 0.7854, f_T: 0.0163, R_b: 1.5 }) // 0.1615
 */
export const bendLossAtAngle = explicit({
  id: "flow/bend-loss-at-angle",
  title: "Loss coefficient of a bend by its angle",
  inputs: {
    K_90: { symbol: "K_90", kind: "ratio" },
    theta: { symbol: "theta", kind: "angle" },
    f_T: { symbol: "f_T", kind: "ratio" },
    R_b: { symbol: "R_b", kind: "ratio" },
  },
  result: { symbol: "K_1", kind: "ratio" },
  expression: "K_90 + (2 * theta / pi - 1) * (pi / 4 * f_T * R_b + K_90 / 2)",
  sources: [
    { key: "fluids", where: "fittings, rounded bend, tabulated", standing: "open reference read" },
    { key: "crane-tp-410", where: "bends other than 90°", standing: "from memory" },
  ],
  ranges: [
    {
      input: "theta",
      from: Math.PI / 2,
      to: Math.PI,
      says: "The formula of the other handbook for the angle of a bend is not made for an angle past the bound. It is carried on, and gives too much for a small one.",
    },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ K_90, theta, f_T, R_b }) =>
    K_90 + ((2 * theta) / Math.PI - 1) * ((Math.PI / 4) * f_T * R_b + K_90 / 2),
});
