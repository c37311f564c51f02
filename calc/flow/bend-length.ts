import { onStraightLines, type Points } from "../numerics/straight-lines.ts";
import { accept } from "../quantity/accept.ts";
import { numerical } from "../relation/relation.ts";

/** Radius over bore, and bores of straight pipe. */
const table: Points = [
  [1, 20],
  [1.5, 14],
  [2, 12],
  [3, 12],
  [4, 14],
  [6, 17],
  [8, 24],
  [10, 30],
  [12, 34],
  [14, 38],
  [16, 42],
  [20, 50],
];
const [from, to] = [1, 20];

/**
 * Length of straight, fully rough pipe, in bores, that loses as much as a smooth bend of 90°; R_b is the radius to the centre
 * line over the bore, 1 to 20. Throws a DomainError naming R_b outside.
 *
 * @example bendLength.compute({ R_b: 1.5 }) // 14
 */
export const bendLength = numerical({
  id: "flow/bend-length",
  title: "Equivalent length of a bend of 90°",
  inputs: { R_b: { symbol: "R_b", kind: "ratio" } },
  result: { symbol: "l_eq", kind: "ratio" },
  tex: String.raw`\ell_\mathrm{eq} = \ell_\mathrm{eq}(R_\mathrm{b})`,
  method:
    "Straight lines between the points of a table. Radius over bore and length in bores: 1 and 20, 1.5 and 14, 2 and 12, 3 and 12, 4 and 14, 6 and 17, 8 and 24, 10 and 30, 12 and 34, 14 and 38, 16 and 42, 20 and 50.",
  sources: [
    { key: "fluids", where: "fittings, table for bends", standing: "open reference read" },
    { key: "crane-tp-410", where: "table for bends of 90°", standing: "from memory" },
  ],
  ranges: [{ input: "R_b", from, to, says: "The table for bends ends at the bound." }],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ R_b }) =>
    onStraightLines(
      table,
      accept("R_b", "The radius of the bend over the bore", R_b, {
        kind: "ratio",
        atLeast: from,
        atMost: to,
      }),
    ),
});
