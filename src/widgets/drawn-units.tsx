import { kinds } from "../../calc/quantity/kinds.ts";
import { fromSI } from "../../calc/quantity/units.ts";
import { trimZeros, writeNumber } from "../../calc/quantity/write.ts";
import type { Picture } from "../calculators/engine/calculator.ts";
import { barometerContext } from "../calculators/engine/entry.ts";
import { isShown } from "../calculators/engine/shown.ts";
import type { State } from "./drawing.ts";
import { UnitScale } from "./pictures/UnitScale.tsx";
import { unitLabel } from "./unit-label.ts";

/** One quantity in every unit of its kind. */
export default function DrawnUnits({ picture, state }: { picture: Picture<string, string>; state: State }) {
  const { calculator, given, values, around } = state;
  const choices = Object.fromEntries(
    Object.entries(given).filter((x): x is [string, string] => typeof x[1] === "string"),
  );
  const [id, result] =
    Object.entries(calculator.results).find(([, r]) => isShown(calculator, r.when, choices)) ?? [];
  if (!id || !result) return null;
  const value = values[id] ?? Number.NaN;
  const rows = kinds[result.kind].units.map((unit) => ({
    unit: unitLabel(unit) || "plain number",
    number: trimZeros(writeNumber(fromSI(value, unit, barometerContext(around)), 6)),
  }));
  return <UnitScale caption={picture.title} rows={rows} />;
}
