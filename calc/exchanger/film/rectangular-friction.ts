import { explicit } from "../../relation/relation.ts";

/**
 * Fanning friction factor times the Reynolds number, both on the hydraulic diameter, of laminar flow far from the entrance of a
 * rectangular channel whose sides have the ratio alpha_r.
 *
 * @example rectangularFriction.compute({ alpha_r: 0.5 }) // 15.557
 */
export const rectangularFriction = explicit({
  id: "exchanger/film/rectangular-friction",
  title: "Friction of laminar flow in a rectangular channel",
  inputs: {
    alpha_r: { symbol: "alpha_r", kind: "fraction" },
  },
  result: { symbol: "fRe", kind: "ratio" },
  expression:
    "24 * (1 - 1.3553 * alpha_r + 1.9467 * alpha_r^2 - 1.7012 * alpha_r^3 + 0.9564 * alpha_r^4 - 0.2537 * alpha_r^5)",

  sources: [
    {
      key: "shah-london-1978",
      where: "chapter VII, polynomials for rectangular ducts",
      standing: "from memory",
    },
  ],
  ranges: [
    { input: "alpha_r", from: 0, to: 1, says: "The short side over the long one lies within the bound." },
  ],
  accuracy: "0.1 %",
  compute: ({ alpha_r }) =>
    24 *
    (1 +
      alpha_r *
        (-1.3553 + alpha_r * (1.9467 + alpha_r * (-1.7012 + alpha_r * (0.9564 + alpha_r * -0.2537))))),
});
