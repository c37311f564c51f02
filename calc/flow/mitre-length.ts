import { onStraightLines, type Points } from "../numerics/straight-lines.ts";
import { accept } from "../quantity/accept.ts";
import { numerical } from "../relation/relation.ts";

const degree = Math.PI / 180;
/** What the table is used for, rad. */
export const TABLED_MITRES = { from: 15 * degree, to: 90 * degree } as const;
const { from, to } = TABLED_MITRES;

/**
 * Angle in rad, and bores of straight pipe. Printed from 0°, where it has 2 bores: a joint that does not turn loses something,
 * but is no mitre bend.
 */
const table: Points = [
  [from, 4],
  [30 * degree, 8],
  [45 * degree, 15],
  [60 * degree, 25],
  [75 * degree, 40],
  [to, 60],
];

/**
 * Length of straight, fully rough pipe, in bores, that loses as much as a mitre bend of the angle theta, 15 to 90° in rad.
 * Throws a DomainError naming theta outside.
 *
 * @example mitreLength.compute({ theta: 0.7854 }) // 15
 */
export const mitreLength = numerical({
  id: "flow/mitre-length",
  title: "Equivalent length of a mitre bend",
  inputs: { theta: { symbol: "theta", kind: "angle" } },
  result: { symbol: "l_eq", kind: "ratio" },
  tex: String.raw`\ell_\mathrm{eq} = \ell_\mathrm{eq}(\theta)`,
  method:
    "Straight lines between the points of a table. Angle and length in bores: 15° and 4, 30° and 8, 45° and 15, 60° and 25, 75° and 40, 90° and 60.",
  sources: [
    { key: "fluids", where: "fittings, table for mitre bends", standing: "open reference read" },
    { key: "crane-tp-410", where: "table for mitre bends", standing: "from memory" },
  ],
  ranges: [{ input: "theta", from, to, says: "The table for mitre bends is not used past the bound." }],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ theta }) =>
    onStraightLines(
      table,
      accept("theta", "The angle of the mitre bend", theta, { kind: "angle", atLeast: from, atMost: to }),
    ),
});
