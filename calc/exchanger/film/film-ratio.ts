import { explicit } from "../../relation/relation.ts";

/**
 * Heat transfer coefficient with one liquid over that with another in the same passages, both in W/(m² K). The conductances of both films
 * have the same ratio.
 *
 * @example filmRatio.compute({ alpha: 5200, alpha_ref: 4800 }) // 1.0833
 */
export const filmRatio = explicit({
  id: "exchanger/film/film-ratio",
  title: "Heat transfer with one liquid over that with another",
  inputs: {
    alpha: { symbol: "alpha", kind: "filmCoefficient" },
    alpha_ref: { symbol: "alpha_ref", kind: "filmCoefficient" },
  },
  result: { symbol: "r_alpha", kind: "ratio" },
  expression: "alpha / alpha_ref",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 7, heat transfer coefficient", standing: "derived here" },
  ],
  compute: ({ alpha, alpha_ref }) => alpha / alpha_ref,
});
