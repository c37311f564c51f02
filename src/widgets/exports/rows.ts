import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../../calc/quantity/kinds.ts";
import { fromSI } from "../../../calc/quantity/units.ts";
import { writeIn, writePlain } from "../../../calc/quantity/write.ts";
import { readBarometer } from "../../calculators/engine/barometer.ts";
import { type Calculator, isChoice } from "../../calculators/engine/calculator.ts";
import {
  barometerContext,
  type Entries,
  readEntry,
  type Surroundings,
  unitOfResult,
} from "../../calculators/engine/entry.ts";
import { noteText, type Success } from "../../calculators/engine/evaluate.ts";
import { isShown } from "../../calculators/engine/shown.ts";

/** What stands in a calculator, and what follows from it: null while something in it cannot be used. */
export interface Shown {
  readonly calculator: Calculator;
  readonly entries: Entries;
  readonly outcome: Success | null;
  readonly around: Surroundings;
}

/** A choice or a quantity that is given, in sight with the choices made. */
export type GivenRow = { readonly id: string; readonly label: string; readonly isExample: boolean } & (
  | { readonly is: "choice"; readonly option: string; readonly optionLabel: string }
  | {
      readonly is: "number";
      readonly kind: Kind;
      readonly value: SI;
      readonly unit: string;
      readonly typed: string | null;
    }
  | {
      readonly is: "unusable";
      readonly kind: Kind;
      readonly typed: string;
      readonly unit: string;
      readonly says: string;
    }
);

/** A result in sight; without a value it has no meaning at this state. */
export interface ResultRow {
  readonly id: string;
  readonly label: string;
  readonly heading: string | undefined;
  readonly kind: Kind;
  readonly value: SI | undefined;
  readonly unit: string;
  readonly notes: readonly string[];
}

export function givenRows({ calculator, entries, around }: Shown): readonly GivenRow[] {
  return Object.entries(calculator.inputs).flatMap(([id, input]): readonly GivenRow[] => {
    if (!isShown(calculator, input.when, entries.choices)) return [];
    const { label } = input;
    if (isChoice(input)) {
      const option = entries.choices[id] ?? input.start;
      const optionLabel = input.options[option] ?? "";
      return [{ is: "choice", id, label, isExample: option === input.start, option, optionLabel }];
    }
    const entry = entries.fields[id];
    if (!entry) return [];
    const { kind } = input;
    const { typed, shown: unit } = entry;
    const isExample = typed === null && (!input.barometer || around.barometer.isExample);
    if (input.barometer && typed === null)
      return [{ is: "number", id, label, isExample, kind, value: around.barometer.value, unit, typed }];
    const reading = input.barometer ? readBarometer(entry) : readEntry(input, entry, around);
    if (!reading.ok)
      return [
        {
          is: "unusable",
          id,
          label,
          isExample,
          kind,
          typed: typed ?? "",
          unit: entry.unit,
          says: reading.says,
        },
      ];
    return [{ is: "number", id, label, isExample, kind, value: reading.value, unit, typed }];
  });
}

/**
 * In the order shown; `withPictures` takes along what stands in the picture alone. A quick answer shows results in units of
 * their own (`isQuick`), a sheet in those of the unit system.
 */
export function resultRows(
  { calculator, entries, outcome, around }: Shown,
  { withPictures = false, isQuick = false } = {},
): readonly ResultRow[] {
  if (!outcome) return [];
  let heading: string | undefined;
  return Object.entries(calculator.results).flatMap(([id, result]) => {
    heading = result.heading ?? heading;
    if ((result.inPicture && !withPictures) || !isShown(calculator, result.when, entries.choices)) return [];
    const { label, kind } = result;
    const notes = outcome.notes.filter((note) => note.about === id).map((note) => noteText(note, around));
    const unit = isQuick ? unitOfResult(calculator, id, entries, around.system) : kinds[kind][around.system];
    return [{ id, label, heading, kind, value: outcome.values[id], unit, notes }];
  });
}

const powers = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** A written number as programs read it: “−1.500 × 10⁻⁵” is `-1.500e-5`. */
export const asPlain = (written: string): string =>
  written
    .replace(/\s*×\s*10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/, (_, power: string) => {
      const digits = [...power].map((c) => (c === "⁻" ? "-" : powers.indexOf(c))).join("");
      return `e${digits}`;
    })
    .replaceAll("\u2212", "-")
    .replace(/\s/g, "");

/** The number of a given quantity in the unit that its field shows, as a person would type it. */
export const givenNumber = (value: SI, unit: string, around: Surroundings): string =>
  writePlain(fromSI(value, unit, barometerContext(around)));

/** The number of a result, with the figures that it shows. */
export const resultNumber = (value: SI, unit: string, around: Surroundings): string =>
  asPlain(writeIn(value, unit, barometerContext(around)));

/** A value in SI, free of the last bits that a conversion leaves. */
export const siNumber = (value: SI): number => Number(value.toPrecision(12));

export const siUnit = (kind: Kind): string => kinds[kind].si;
