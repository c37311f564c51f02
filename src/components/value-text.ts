import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { unitOf } from "../../calc/quantity/units.ts";
import { writeNumber, writeQuantity } from "../../calc/quantity/write.ts";
import { barometerContext } from "../calculators/engine/entry.ts";
import type { Worked } from "./worked-example.ts";
import { numberOf } from "./worked-number.ts";

/** Which number of a worked calculator a text wants, and how it is written. Ids are of results or inputs. */
export interface Wanted {
  readonly of: string;
  /** Takes this one away: of two temperatures the difference is left. */
  readonly less?: string | undefined;
  /** Divides by this one. */
  readonly over?: string | undefined;
  /** Writes by how many percent a ratio lies above 1. */
  readonly gain?: boolean | undefined;
  readonly digits?: number | undefined;
  /** Another unit than the usual one of the kind. */
  readonly unit?: string | undefined;
  /** `metric` leaves the US unit out. */
  readonly in?: "metric" | "both" | undefined;
}

const differenceOf: Partial<Record<Kind, Kind>> = {
  temperature: "temperatureDifference",
  pressure: "pressureDifference",
};

/**
 * A number as it stands in a sentence, in metric with the US unit in parentheses where that differs:
 * `valueText(worked, { of: "T_2" })` is `126 °C (259 °F)`. Throws where the calculator has no such number.
 */
export function valueText(
  worked: Worked,
  { of, less, over, gain, digits = 3, unit, in: shownIn = "both" }: Wanted,
): string {
  let { value, kind } = numberOf(worked, of);
  if (over) [value, kind] = [value / numberOf(worked, over).value, "ratio"];
  if (less) [value, kind] = [value - numberOf(worked, less).value, differenceOf[kind] ?? kind];
  if (gain) {
    if (kind !== "ratio")
      throw new Error(`“${of}” is not a ratio, so it has no gain in percent. Name what it is over.`);
    return `${writeNumber((value - 1) * 100, digits)}\u00a0%`;
  }
  const context = barometerContext(worked.around);
  const { metric, us } = kinds[kind];
  const first = writeQuantity(value, unit ?? metric, context, digits);
  const second = writeQuantity(value, us, context, digits);
  return shownIn === "metric" || us === (unit ?? metric) ? first : `${first} (${second})`;
}

/**
 * An input as it was typed, with the unit of the other system in parentheses where that differs: `25 °C (77.0 °F)`.
 * Throws where it was not typed.
 */
export function givenText(worked: Worked, id: string): string {
  const typed = worked.typed[id];
  const { value, kind } = numberOf(worked, id);
  if (!typed) throw new Error(`“${id}” was not given.`);
  const text = typed.text.replaceAll(" ", "\u00a0");
  const { metric, us } = kinds[kind];
  const plain = typed.unit.replace(/-g$/, "") === us ? metric : us;
  const other = unitOf(typed.unit).gauge ? `${plain}-g` : plain;
  return metric === us
    ? text
    : `${text} (${writeQuantity(value, other, barometerContext(worked.around), 3)})`;
}
