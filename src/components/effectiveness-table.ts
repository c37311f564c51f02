import type { Arrangement } from "../../calc/exchanger/arrangement.ts";
import { csvText } from "../widgets/exports/csv-text.ts";

/** From 0 on, in equal steps up to each bound in turn. */
const steps = (...parts: readonly (readonly [step: number, to: number])[]): readonly number[] => {
  let from = 0;
  const marks = [from];
  for (const [step, to] of parts) {
    const count = Math.round((to - from) / step);
    for (let i = 1; i <= count; i++) marks.push(Number((from + i * step).toFixed(6)));
    from = to;
  }
  return marks;
};

/** What the file of an arrangement holds: its rows are closest where the curves bend most. */
export const filed = { NTU: steps([0.05, 1], [0.25, 4], [0.5, 10]), R: steps([0.25, 2], [0.5, 4]) };

/** What its page prints, and draws up to the last of these rows. A part of what is filed. */
export const printed = {
  NTU: [0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8],
  R: [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 4],
} as const;

/** P of one arrangement over NTU (rows) and R (columns). */
export interface EffectivenessTable {
  readonly NTU: readonly number[];
  readonly R: readonly number[];
  readonly P: readonly (readonly number[])[];
}

// A numerical relation takes about a millisecond a call, and a page and its file want the same numbers.
const computed = new Map<string, EffectivenessTable>();

/** Everything that the file of an arrangement holds, computed once in a build. */
export function tableOf({ id, effectiveness }: Arrangement): EffectivenessTable {
  const known = computed.get(id);
  if (known) return known;
  const P = filed.NTU.map((NTU) => filed.R.map((R) => effectiveness.compute({ NTU, R })));
  const table = { ...filed, P };
  computed.set(id, table);
  return table;
}

/** Some rows and columns of a table. Throws where the table has no such row or column. */
export function part(
  table: EffectivenessTable,
  { NTU, R }: Omit<EffectivenessTable, "P">,
): EffectivenessTable {
  const placeIn = (all: readonly number[], name: string) => (value: number) => {
    const at = all.indexOf(value);
    if (at < 0) throw new RangeError(`the table has no ${name} of ${value}`);
    return at;
  };
  const rows = NTU.map(placeIn(table.NTU, "NTU"));
  const columns = R.map(placeIn(table.R, "R"));
  return { NTU, R, P: rows.map((row) => columns.map((column) => table.P[row]?.[column] ?? Number.NaN)) };
}

/** The points of one column up to an NTU, for a curve. */
export const curveOf = (
  table: EffectivenessTable,
  R: number,
  upTo: number,
): readonly (readonly [number, number])[] => {
  const NTU = table.NTU.filter((one) => one <= upTo);
  return part(table, { NTU, R: [R] }).P.map(([P = Number.NaN], row) => [NTU[row] ?? 0, P] as const);
};

/** As the table is printed: four decimals. */
export const fourDecimals = (P: number): string => P.toFixed(4);

/**
 * The table as comma-separated values (RFC 4180): a row of names, then a row for each NTU, P to six decimals.
 * @example csvOf(tableOf(counterflow)) // NTU,P(R=0),P(R=0.25),…
 */
export const csvOf = ({ NTU, R, P }: EffectivenessTable): string =>
  csvText([
    ["NTU", ...R.map((one) => `P(R=${one})`)],
    ...P.map((row, i) => [String(NTU[i]), ...row.map((one) => one.toFixed(6))]),
  ]);
