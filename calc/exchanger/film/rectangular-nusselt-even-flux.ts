import { explicit } from "../../relation/relation.ts";

/**
 * Nusselt number, on the hydraulic diameter, of laminar flow far from the entrance of a rectangular channel whose sides have the
 * ratio alpha_r, which is heated alike along its length and has one wall temperature around its edge.
 *
 * @example rectangularNusseltEvenFlux.compute({ alpha_r: 0.5 }) // 4.1258
 */
export const rectangularNusseltEvenFlux = explicit({
  id: "exchanger/film/rectangular-nusselt-even-flux",
  title: "Nusselt number of laminar flow in a rectangular channel, heated alike along its length",
  inputs: {
    alpha_r: { symbol: "alpha_r", kind: "fraction" },
  },
  result: { symbol: "Nu_H", kind: "ratio" },
  expression:
    "8.235 * (1 - 2.0421 * alpha_r + 3.0853 * alpha_r^2 - 2.4765 * alpha_r^3 + 1.0578 * alpha_r^4 - 0.1861 * alpha_r^5)",

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
    8.235 *
    (1 +
      alpha_r *
        (-2.0421 + alpha_r * (3.0853 + alpha_r * (-2.4765 + alpha_r * (1.0578 + alpha_r * -0.1861))))),
});
