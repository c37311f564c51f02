import { explicit } from "../../relation/relation.ts";

/**
 * Nusselt number, on the hydraulic diameter, of laminar flow far from the entrance of a rectangular channel whose sides have the
 * ratio alpha_r, at a wall of one temperature.
 *
 * @example rectangularNusselt.compute({ alpha_r: 0.5 }) // 3.3887
 */
export const rectangularNusselt = explicit({
  id: "exchanger/film/rectangular-nusselt",
  title: "Nusselt number of laminar flow in a rectangular channel",
  inputs: {
    alpha_r: { symbol: "alpha_r", kind: "fraction" },
  },
  result: { symbol: "Nu_d", kind: "ratio" },
  expression:
    "7.541 * (1 - 2.61 * alpha_r + 4.97 * alpha_r^2 - 5.119 * alpha_r^3 + 2.702 * alpha_r^4 - 0.548 * alpha_r^5)",

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
  accuracy: "0.6 %",
  compute: ({ alpha_r }) =>
    7.541 *
    (1 + alpha_r * (-2.61 + alpha_r * (4.97 + alpha_r * (-5.119 + alpha_r * (2.702 + alpha_r * -0.548))))),
});
