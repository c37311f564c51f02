import { lastBits } from "../../../calc/quantity/accept.ts";
import { fromSI, toSI } from "../../../calc/quantity/units.ts";
import { writePlain } from "../../../calc/quantity/write.ts";
import { readBarometer } from "./barometer.ts";
import type { Field } from "./calculator.ts";
import { barometerContext, type Entry, readEntry, type Surroundings, withinText } from "./entry.ts";

/** About a hundredth of `size`, as 1, 2 or 5 times a power of ten: `stepOf(2.2)` is 0.02. `size` has to be above zero. */
export function stepOf(size: number): number {
  const power = Math.floor(Math.log10(size / 100));
  const lead = size / 100 / 10 ** power;
  // The bounds lie halfway between the steps in proportion.
  const round = lead < Math.SQRT2 ? 1 : lead < Math.sqrt(10) ? 2 : lead < Math.sqrt(50) ? 5 : 10;
  return Number(`${round}e${power}`);
}

/** What a conversion of units may leave of a number that stands on a step already. */
const almost = 1e-9;

/**
 * The text of a field `steps` further up, or down where they are below zero, in the unit that it shows. It stands on a whole
 * number of steps, and what stood behind ± stays. Null where the text cannot be read, or where no step is left before the bound of the field.
 *
 * A step is a hundredth of the value counted from its true zero, so that it does not shrink towards 0 °C or 0 on a gauge; and of
 * a tenth of the example at the least, so that zero itself is reached and left.
 */
export function stepped(field: Field, entry: Entry, around: Surroundings, steps: number): string | null {
  const reading = field.barometer ? readBarometer(entry) : readEntry(field, entry, around);
  if (!reading.ok) return null;
  const context = barometerContext(around);
  const shown = (value: number) => fromSI(value, entry.shown, context);
  const [least, most] = field.limits;
  const size = Math.max(Math.abs(reading.value), Math.abs(field.start) / 10) || Math.max(-least, most) / 10;
  const step = stepOf(shown(size) - shown(0));

  const number = shown(reading.value);
  const way = Math.sign(steps);
  const from = way * Math.floor((way * number) / step + almost);
  const isAllowed = (next: number): boolean => {
    const value = toSI(next, entry.shown, context);
    return way > 0 ? value <= most + lastBits(most) : value >= least - lastBits(least);
  };
  for (let count = Math.abs(steps); count > 0; count -= 1) {
    const next = (from + way * count) * step;
    if (isAllowed(next)) return writePlain(next) + withinText(reading.within, entry.shown);
  }
  return null;
}
