import { explicit } from "../../relation/relation.ts";

/**
 * Mean Nusselt number of laminar flow in a round tube whose wall has one temperature, from the Graetz number: within 9 % of the
 * exact one.
 *
 * @example hausenNusselt.compute({ Gz: 50 }) // 5.8248
 */
export const hausenNusselt = explicit({
  id: "exchanger/film/hausen-nusselt",
  title: "Nusselt number of laminar flow in a tube, after Hausen",
  inputs: {
    Gz: { symbol: "Gz", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression: "3.66 + 0.0668 * Gz / (1 + 0.04 * Gz^(2 / 3))",

  sources: [{ key: "hausen-1943", where: "laminar flow in tubes", standing: "from memory" }],
  ranges: [
    {
      input: "Gz",
      from: 1,
      to: 400,
      says: "The formula is compared here with the exact solution within the bound only.",
    },
  ],
  accuracy: "10 %",
  compute: ({ Gz }) => 3.66 + (0.0668 * Gz) / (1 + 0.04 * Math.cbrt(Gz) ** 2),
});
