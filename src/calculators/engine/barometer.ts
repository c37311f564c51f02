import { lastBits } from "../../../calc/quantity/accept.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import { defaultUnit, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { type Reading, readQuantity } from "../../../calc/quantity/read.ts";
import { repeated } from "../../../calc/quantity/repeated.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import { type BoundSide, writeBound } from "../../../calc/quantity/write.ts";
import type { Field } from "./calculator.ts";
import type { Entry } from "./entry.ts";

/**
 * The station pressure, asked once for the whole site. Its limits are what a barometer on the ground can show, from high
 * ground in a deep low to the shore of the lowest lakes in a strong high: common practice, no source.
 */
export const barometerField = {
  label: "Barometer",
  symbol: "p_0",
  kind: "pressure",
  start: 100_000,
  limits: [40_000, 110_000],
  help: "",
  barometer: true,
} as const satisfies Field;

/** The place by its elevation: what the standard atmosphere is asked at. */
export const elevationField = {
  label: "Elevation of the place",
  symbol: "z",
  kind: "altitude",
  start: 110,
  limits: [-430, 6000],
  help: "Above sea level.",
} as const satisfies Field;

/** The barometer until a visitor gives one; examples on the site are worked with it. */
export const exampleBarometer: SI = barometerField.start;

export const exampleEntry = (system: UnitSystem): Entry => {
  const unit = defaultUnit("pressure", system);
  return { typed: null, example: exampleBarometer, unit, shown: unit };
};

/** Reads a station pressure. It is what gauges count from, so it is never read on one itself. */
export function readBarometer(entry: Entry): Reading {
  const reading: Reading =
    entry.typed === null
      ? { ok: true, value: entry.example, number: entry.example, unit: entry.unit }
      : readQuantity(entry.typed, "pressure", entry.unit, {
          barometer: exampleBarometer,
          isBarometer: true,
        });
  if (!reading.ok) return reading;
  const [least, most] = barometerField.limits;
  const write = (bound: SI, side: BoundSide) => writeBound(bound, plainUnit(entry.shown), {}, 6, side);
  const accepted = `Accepted: ${write(least, "least")} to ${write(most, "most")}, absolute, as the instrument on the spot reads.`;
  if (unitOf(reading.unit).gauge) {
    return {
      ok: false,
      says: `A gauge counts from the barometer, so the barometer itself is absolute. ${accepted}`,
    };
  }
  if (reading.value >= least - lastBits(least) && reading.value <= most + lastBits(most)) return reading;
  return { ok: false, says: `${repeated(entry.typed ?? "")} is not a station pressure. ${accepted}` };
}

/** The absolute unit of a gauge's unit; any other unit as it is. */
export const plainUnit = (unit: string): string => unit.replace(/-g$/, "");
