import type { SI } from "../../calc/quantity/domain-error.ts";
import { type Kind, kinds, type UnitSystem } from "../../calc/quantity/kinds.ts";
import { fromSI, toSI, unitOf } from "../../calc/quantity/units.ts";
import { trimZeros, writeNumber } from "../../calc/quantity/write.ts";
import type { AnyRelation, Source } from "../../calc/relation/relation.ts";
import type { symbols } from "../../calc/symbols.ts";
import { csvText } from "../widgets/exports/csv-text.ts";
import type { FamilyProps } from "../widgets/pictures/family-layout.ts";
import type { Point } from "../widgets/pictures/path.ts";

/** A name, or a number in SI; undefined where physics or its source has none. */
export type Cell = SI | string | undefined;

/** How the page writes the numbers of a column: so many decimals, so many figures, or all figures up to so many. */
type Digits = { readonly decimals: number } | { readonly figures: number } | { readonly upTo: number };

export interface Column {
  /** What stands in it, in plain words without an article. Columns side by side with the same words share a head. */
  readonly words: string;
  readonly symbol?: keyof typeof symbols;
  /** What tells columns of the same words apart: "at 200 kPa". */
  readonly under?: string;
  /** The unit in which page and file give it, an id of calc/quantity/units.ts. A column of names has none. */
  readonly unit?: string;
  readonly digits?: Digits;
}

/** Rows of a table that belong together. */
export interface Body {
  readonly title?: string;
  readonly rows: readonly (readonly Cell[])[];
}

/** One grid of numbers, with a file of its own. Its first column names the row. */
export interface Sheet {
  /** Stands in the name of its file: "metric". */
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly bodies: readonly Body[];
}

/** A page of reference numbers. Everything in it is computed from calc/ when the site is built. */
export interface ReferenceTable {
  readonly id: string;
  /** Its place among the tables. */
  readonly order: number;
  readonly title: string;
  readonly lead: string;
  /** Other words under which search finds it. */
  readonly synonyms: readonly string[];
  readonly chart: FamilyProps & { readonly caption: string };
  readonly sheets: readonly Sheet[];
  /** For what the numbers hold and how closely, beyond what the relations themselves declare. */
  readonly says: readonly string[];
  readonly caution?: string;
  /** Those that made the numbers: the page gives their accuracy, range and sources. */
  readonly relations: readonly AnyRelation[];
  /** What the numbers rest on besides. */
  readonly sources?: readonly Source[];
  /** Ids of calculators and lessons in which the numbers are used. */
  readonly numbers: readonly string[];
  readonly lessons: readonly string[];
}

/** A column with what it takes from a row. */
export interface ColumnOf<Row> extends Column {
  readonly of: (row: Row) => Cell;
}

/** A sheet from its rows and columns. */
export const sheetOf = <Row>({
  rows,
  columns,
  ...names
}: {
  readonly id: string;
  readonly title: string;
  readonly rows: readonly Row[];
  readonly columns: readonly ColumnOf<Row>[];
}): Sheet => ({
  ...names,
  columns: columns.map(({ of, ...column }) => column),
  bodies: [{ rows: rows.map((row) => columns.map(({ of }) => of(row))) }],
});

/** The same sheet in metric and in US units, each over its own round numbers. */
export const inBothSystems = (build: (system: UnitSystem) => Sheet | readonly Sheet[]): readonly Sheet[] =>
  (["metric", "us"] as const).flatMap(build);

/** What sheets call a system in their titles. */
export const systemName = { metric: "metric units", us: "US units" } as const;

/** The unit of a kind in a system. */
export const unitIn = (system: UnitSystem, kind: Kind): string => kinds[kind][system];

/** SI values of round numbers in a unit: each part runs in equal steps from the end of the one before up to its bound. */
export function roundNumbers(
  unit: string,
  from: number,
  ...parts: readonly (readonly [step: number, to: number])[]
): readonly SI[] {
  const marks = [from];
  for (const [step, to] of parts) {
    const start = marks.at(-1) ?? from;
    const count = Math.round((to - start) / step);
    for (let i = 1; i <= count; i++) marks.push(start + i * step);
  }
  return marks.map((mark) => toSI(mark, unit));
}

/** Points of a curve through SI values, in the units of its axes. */
export const pointsOf = (
  xs: readonly SI[],
  [xUnit, yUnit]: readonly [string, string],
  y: (x: SI) => SI,
): readonly Point[] => xs.map((x) => [fromSI(x, xUnit), fromSI(y(x), yUnit)]);

/** Figures to which a file gives its numbers unless its column shows more: beyond what any source here is good for. */
const FILED_FIGURES = 8;
/** Beyond these stand only the last bits of a conversion. */
const TRUE_FIGURES = 12;

const withTrueMinus = (text: string): string => text.replace(/^-/, "\u2212");

/** A cell as the page writes it: `writeCell(293.15, { words: "temperature", unit: "degC", digits: { decimals: 0 } })` is `20`. */
export function writeCell(cell: Cell, { unit = "1", digits = { figures: 4 } }: Column): string {
  if (cell === undefined) return "none";
  if (typeof cell === "string") return cell;
  const value = Number(fromSI(cell, unit).toPrecision(TRUE_FIGURES));
  if ("figures" in digits) return writeNumber(value, digits.figures);
  if ("upTo" in digits) return trimZeros(writeNumber(value, digits.upTo));
  const text = value.toFixed(digits.decimals);
  return withTrueMinus(Number(text) === 0 ? text.replace("-", "") : text);
}

/** The unit of a column as a reader sees it; empty for a plain number or a name. */
export const unitText = ({ unit }: Column): string => (unit === undefined ? "" : unitOf(unit).label);

const headOf = ({ words, under, unit }: Column): string =>
  [words, under?.replaceAll("\u00a0", " "), unit !== undefined && `[${unit}]`].filter(Boolean).join(" ");

const inFile = (cell: Cell, { unit = "1", digits = { figures: FILED_FIGURES } }: Column): string | number => {
  if (cell === undefined) return "";
  if (typeof cell === "string") return cell;
  const figures = "upTo" in digits ? Math.max(digits.upTo, FILED_FIGURES) : FILED_FIGURES;
  return Number(fromSI(cell, unit).toPrecision(figures));
};

/**
 * A sheet as comma-separated values (RFC 4180): a row of names with the ids of their units, then the rows, to eight
 * figures or as many as the page shows. Bodies with titles put theirs into a first column.
 */
export function csvOf({ columns, bodies }: Sheet): string {
  const hasTitles = bodies.some(({ title }) => title !== undefined);
  const lines = [
    [...(hasTitles ? ["kind"] : []), ...columns.map(headOf)],
    ...bodies.flatMap(({ title = "", rows }) =>
      rows.map((row) => [
        ...(hasTitles ? [title] : []),
        ...columns.map((column, i) => inFile(row[i], column)),
      ]),
    ),
  ];
  return csvText(lines);
}
