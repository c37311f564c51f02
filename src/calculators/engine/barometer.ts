import type { SI } from "../../../calc/quantity/domain-error.ts";
import { defaultUnit, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { type Reading, readQuantity } from "../../../calc/quantity/read.ts";
import { writeBound, writeQuantity } from "../../../calc/quantity/write.ts";
import type { Entry } from "./entry.ts";

/** The barometer until a visitor gives one; examples on the site are worked with it. */
export const exampleBarometer: SI = 100_000;

/**
 * Station pressures that a barometer on the ground can show, from high ground with a deep low to the shore of the
 * lowest lakes in a strong high: common practice, no source.
 */
export const barometerLimits: readonly [SI, SI] = [40_000, 110_000];

export const exampleEntry = (system: UnitSystem): Entry => {
  const unit = defaultUnit("pressure", system);
  return { typed: null, example: exampleBarometer, unit, shown: unit };
};

/** Reads a station pressure. A gauge has no meaning here: the barometer is what gauges count from. */
export function readBarometer(entry: Entry): Reading {
  const reading: Reading =
    entry.typed === null
      ? { ok: true, value: entry.example, number: entry.example, unit: entry.unit }
      : readQuantity(entry.typed, "pressure", entry.unit, {});
  if (!reading.ok) return reading;
  const [least, most] = barometerLimits;
  if (reading.value >= least && reading.value <= most) return reading;
  const write = (x: SI) => writeBound(x, entry.shown);
  return {
    ok: false,
    says: `${writeQuantity(reading.value, entry.shown)} is not a station pressure. Accepted: ${write(least)} to ${write(most)}, as the instrument reads, absolute.`,
  };
}
