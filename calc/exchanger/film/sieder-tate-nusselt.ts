import { explicit } from "../../relation/relation.ts";

/**
 * Mean Nusselt number of laminar flow in a round tube near its entrance, from the Graetz number, with one viscosity. Meant for a
 * Graetz number above 10; below, it falls under what flow far from the entrance has.
 *
 * @example siederTateNusselt.compute({ Gz: 50 }) // 6.8523
 */
export const siederTateNusselt = explicit({
  id: "exchanger/film/sieder-tate-nusselt",
  title: "Nusselt number of laminar flow in a tube, after Sieder and Tate",
  inputs: {
    Gz: { symbol: "Gz", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression: "1.86 * Gz^(1 / 3)",

  sources: [{ key: "sieder-tate-1936", where: "viscous flow in tubes", standing: "from memory" }],
  ranges: [
    {
      input: "Gz",
      from: 10,
      to: 400,
      says: "The formula is for passages that are short for their flow. Below the bound it falls under what flow far from the entrance has.",
    },
  ],
  compute: ({ Gz }) => 1.86 * Math.cbrt(Gz),
});
