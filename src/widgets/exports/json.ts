import { version } from "../../calculators/engine/former-examples.ts";
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

function givenOf(row: GivenRow, { around }: Shown) {
  const { label, isExample } = row;
  if (row.is === "choice") return { label, option: row.option, means: row.optionLabel };
  const { kind, typed, unit } = row;
  if (row.is === "unusable") return { label, kind, typed, unit, trouble: row.says };
  return {
    label,
    kind,
    isExample,
    ...(typed !== null && { typed }),
    shown: { value: Number(givenNumber(row.value, unit, around)), unit },
    SI: { value: siNumber(row.value), unit: siUnit(kind) },
  };
}

function resultOf({ label, kind, value, unit, notes }: ResultRow, { around }: Shown) {
  return {
    label,
    kind,
    shown: value === undefined ? null : { value: Number(resultNumber(value, unit, around)), unit },
    SI: value === undefined ? null : { value: siNumber(value), unit: siUnit(kind) },
    ...(notes.length > 0 && { notes }),
  };
}

/**
 * State and results for programs. Units are ids; `SI` is what was computed with and what came out, to twelve figures, and
 * `shown` what the page shows. A result without meaning at the state is null. `linkVersion` says how `link` is to be read.
 */
export function asJson(shown: Shown, link: string): string {
  const { calculator, around, outcome } = shown;
  const { value, isExample } = around.barometer;
  return JSON.stringify(
    {
      calculator: calculator.id,
      title: calculator.title,
      link,
      linkVersion: version,
      units: around.system,
      barometer: { SI: { value: siNumber(value), unit: "Pa" }, isExample },
      given: Object.fromEntries(givenRows(shown).map((row) => [row.id, givenOf(row, shown)])),
      results:
        outcome &&
        Object.fromEntries(
          resultRows(shown, { withPictures: true }).map((row) => [row.id, resultOf(row, shown)]),
        ),
    },
    null,
    2,
  );
}
