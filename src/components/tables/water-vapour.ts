import { constants } from "../../../calc/constants.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { dewPointAtPressure } from "../../../calc/fluids/dew-point-at-pressure.ts";
import { enhancementFactor } from "../../../calc/fluids/enhancement-factor.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { saturationOverIce } from "../../../calc/fluids/saturation-over-ice.ts";
import { saturationOverWater } from "../../../calc/fluids/saturation-over-water.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { vapourPressureFromHumidityRatio } from "../../../calc/fluids/vapour-pressure-from-humidity-ratio.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { toSI } from "../../../calc/quantity/units.ts";
import { writeBound } from "../../../calc/quantity/write.ts";
import { plain } from "../../../calc/relation/trace.ts";
import {
  inBothSystems,
  pointsOf,
  type ReferenceTable,
  roundNumbers,
  sheetOf,
  systemName,
  unitIn,
} from "../reference-table.ts";

const p_0 = constants.p_sl.value;
const triple = constants.T_t.value;

/** The dew point at the pressure p in Pa of air that has the dew point T_dp in K at the barometer of the table. */
function compressedDewPoint(T_dp: SI, p: SI): SI | undefined {
  const f_e = enhancementFactor.compute({ T: T_dp, p: p_0 });
  const w = humidityRatio.compute({ p_v: f_e * saturationPressure.compute({ T: T_dp }), p: p_0 });
  const p_v = vapourPressureFromHumidityRatio.compute({ w, p });
  return dewPointAtPressure({ p_v, p }, plain, "charge");
}

const temperatures = {
  metric: roundNumbers("degC", -40, [10, 0], [2, 40], [10, 100]),
  us: roundNumbers("degF", -40, [20, 20], [12, 32], [3, 35], [5, 100], [20, 200]),
};
const dewPoints = {
  metric: roundNumbers("degC", 0, [5, 30]),
  us: roundNumbers("degF", 32, [8, 40], [10, 80]),
};
const charges = {
  metric: [150, 200, 250, 300, 400].map((p) => toSI(p, "kPa")),
  us: [22, 29, 36, 44, 58].map((p) => toSI(p, "psi")),
};

const saturation = (system: UnitSystem) =>
  sheetOf({
    id: system,
    title: `Vapour pressure of water and ice, ${systemName[system]}`,
    rows: temperatures[system],
    columns: [
      {
        words: "Temperature",
        symbol: "T",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 0 },
        of: (T) => T,
      },
      {
        words: "Vapour pressure",
        symbol: "p_ws",
        unit: unitIn(system, "pressure"),
        digits: { figures: 4 },
        of: (T) => saturationPressure.compute({ T }),
      },
      {
        words: "The same",
        symbol: "p_ws",
        unit: system === "metric" ? "mbar" : "inHg",
        digits: { figures: 4 },
        of: (T) => saturationPressure.compute({ T }),
      },
      { words: "Over", of: (T) => (T < triple ? "ice" : "water") },
    ],
  });

const dewPointSheet = (system: UnitSystem) => {
  const unit = unitIn(system, "temperature");
  return sheetOf({
    id: `dew-point-${system}`,
    title: `Dew point after compression, ${systemName[system]}`,
    rows: dewPoints[system],
    columns: [
      {
        words: `Dew point at ${writeBound(p_0, unitIn(system, "pressure"))}`,
        symbol: "T_dp",
        unit,
        digits: { decimals: 0 },
        of: (T) => T,
      },
      ...charges[system].map((p) => ({
        words: "Dew point",
        symbol: "T_dp" as const,
        under: `at ${writeBound(p, unitIn(system, "pressure"))}`,
        unit,
        digits: { decimals: 1 },
        of: (T: SI) => compressedDewPoint(T, p),
      })),
    ],
  });
};

const drawn = roundNumbers("degC", 0, [3, 30]);

export default {
  id: "water-vapour",
  order: 30,
  title: "Water vapour and dew point",
  lead: "The vapour pressure of water and of ice, and how far compression lifts the dew point of the air it squeezes.",
  synonyms: ["saturation pressure", "steam table", "frost point", "vapor pressure", "pressure dew point"],
  chart: {
    title: "Dew point of charge air against its dew point outside",
    caption:
      "At the end of each curve stands the absolute pressure of the charge, in kPa. A cooler or a pipe that is colder than the curve lets water out.",
    x: { label: "dew point outside", unit: "°C", from: 0, to: 30 },
    y: { label: "dew point of the charge", unit: "°C", from: 0, to: 60 },
    by: "p",
    curves: charges.metric.map((p) => ({
      label: writeBound(p, "kPa").replace(/\D*$/, ""),
      points: pointsOf(drawn, ["degC", "degC"], (T) => compressedDewPoint(T, p) ?? Number.NaN),
    })),
  },
  sheets: [...inBothSystems(saturation), ...inBothSystems(dewPointSheet)],
  says: [
    `The dew points outside are those at ${writeBound(p_0, "kPa")} (${writeBound(p_0, "psi")}), the standard atmosphere at sea level. Vapour pressure needs no barometer; saturated air holds a little more vapour than it says, by the enhancement factor, which the dew points contain.`,
    "Below the triple point the numbers are for ice. Water can stay liquid a little below it, with a higher vapour pressure than ice, until something makes it freeze.",
  ],
  relations: [
    saturationPressure,
    saturationOverWater,
    saturationOverIce,
    enhancementFactor,
    vapourPressureFromHumidityRatio,
    dewPoint,
  ],
  numbers: ["condensation"],
  lessons: ["charge-density"],
} satisfies ReferenceTable as ReferenceTable;
