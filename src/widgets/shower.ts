import type { SI } from "../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { fromSI, toSI } from "../../calc/quantity/units.ts";
import { writeIn } from "../../calc/quantity/write.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import type { Show, TemperatureScale } from "./pictures/types.ts";
import { unitLabel } from "./unit-label.ts";

/** Writes quantities of a kind as the visitor reads them. */
export const shower = (kind: Kind, around: Surroundings): Show => {
  const unit = kinds[kind][around.system];
  return (x: SI) => ({ number: writeIn(x, unit, barometerContext(around)), unit: unitLabel(unit) });
};

/** The scale that the visitor's thermometer has. */
export function temperatureScale(around: Surroundings): TemperatureScale {
  const unit = kinds.temperature[around.system];
  return {
    unit: unitLabel(unit),
    shown: (kelvin) => fromSI(kelvin, unit, {}),
    kelvin: (shown) => toSI(shown, unit, {}),
  };
}
