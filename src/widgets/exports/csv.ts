import { barometerRow } from "./barometer-row.ts";
import { type Cell, csvText } from "./csv-text.ts";
import {
  type GivenRow,
  givenNumber,
  givenRows,
  type ResultRow,
  resultNumber,
  resultRows,
  type Shown,
  siNumber,
  siUnit,
} from "./rows.ts";

const columns = ["part", "id", "label", "value", "unit", "SI value", "SI unit", "note"] as const;
type Line = readonly [
  part: string,
  id: string,
  label: string,
  value: Cell,
  unit: string,
  si: Cell,
  siUnit: string,
  note: string,
];

function givenLine(row: GivenRow, { around }: Shown): Line {
  const { id, label } = row;
  const example = row.isExample ? "example value" : "";
  if (row.is === "choice") return ["given", id, label, row.optionLabel, "", "", "", `option ${row.option}`];
  if (row.is === "unusable")
    return ["given", id, label, row.typed, row.unit, "", siUnit(row.kind), `cannot be used: ${row.says}`];
  const number = Number(givenNumber(row.value, row.unit, around));
  return ["given", id, label, number, row.unit, siNumber(row.value), siUnit(row.kind), example];
}

function resultLine({ id, label, kind, value, unit, notes }: ResultRow, { around }: Shown): Line {
  if (value === undefined)
    return ["result", id, label, "", unit, "", siUnit(kind), "no meaning at this state"];
  const number = Number(resultNumber(value, unit, around));
  return ["result", id, label, number, unit, siNumber(value), siUnit(kind), notes.join(" ")];
}

/** State and results as a table: a row a quantity, units by their ids, values as shown and in SI. */
export function asCsv(shown: Shown, link: string): string {
  const lines: readonly (readonly Cell[])[] = [
    columns,
    ...[...givenRows(shown), ...barometerRow(shown)].map((row) => givenLine(row, shown)),
    ...resultRows(shown, { withPictures: true }).map((row) => resultLine(row, shown)),
    ["link", "", shown.calculator.title, link, "", "", "", ""],
  ];
  return csvText(lines);
}
