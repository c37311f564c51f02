import { constants } from "../../../calc/constants.ts";
import { density } from "../../../calc/fluids/density.ts";
import { enhancementFactor } from "../../../calc/fluids/enhancement-factor.ts";
import { enthalpyPerDryAir } from "../../../calc/fluids/enthalpy-per-dry-air.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { vapourPressure } from "../../../calc/fluids/vapour-pressure.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { writeBound } from "../../../calc/quantity/write.ts";
import {
  inBothSystems,
  pointsOf,
  type ReferenceTable,
  roundNumbers,
  sheetOf,
  systemName,
  unitIn,
} from "../reference-table.ts";

/** The barometer of the whole table. */
const p = constants.p_sl.value;
const barometer = `${writeBound(p, "kPa")} (${writeBound(p, "psi")})`;

const vapourAt = (T: SI, varphi: number): SI => {
  const p_ws = saturationPressure.compute({ T });
  return vapourPressure.compute({ varphi, f_e: enhancementFactor.compute({ T, p }), p_ws });
};
const wAt = (T: SI, varphi: number): SI => humidityRatio.compute({ p_v: vapourAt(T, varphi), p });
const densityAt = (T: SI, varphi: number): SI =>
  density.compute({ p, R_m: gasConstant.compute({ w: wAt(T, varphi) }), T });

const temperatures = {
  metric: roundNumbers("degC", 0, [5, 60]),
  us: roundNumbers("degF", 32, [8, 40], [10, 140]),
};
const humidities = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
const percent = (varphi: number): string => writeBound(varphi, "%");

const temperature = (system: UnitSystem) => ({
  words: "Temperature",
  symbol: "T" as const,
  unit: unitIn(system, "temperature"),
  digits: { decimals: 0 },
  of: (T: SI) => T,
});

const saturated = (system: UnitSystem) =>
  sheetOf({
    id: `saturated-${system}`,
    title: `Saturated air, ${systemName[system]}`,
    rows: temperatures[system],
    columns: [
      temperature(system),
      {
        words: "Vapour pressure in the air",
        symbol: "p_v",
        unit: unitIn(system, "pressure"),
        digits: { figures: 4 },
        of: (T) => vapourAt(T, 1),
      },
      {
        words: "Humidity ratio",
        symbol: "w_s",
        unit: unitIn(system, "humidityRatio"),
        digits: { figures: 4 },
        of: (T) => wAt(T, 1),
      },
      {
        words: "Enthalpy per dry air",
        symbol: "h_da",
        unit: unitIn(system, "specificEnergy"),
        digits: { decimals: 2 },
        of: (T) => enthalpyPerDryAir.compute({ T, w: wAt(T, 1) }),
      },
      {
        words: "Density, saturated",
        symbol: "rho",
        unit: unitIn(system, "density"),
        digits: { decimals: system === "metric" ? 4 : 5 },
        of: (T) => densityAt(T, 1),
      },
      {
        words: "Density, dry",
        symbol: "rho",
        unit: unitIn(system, "density"),
        digits: { decimals: system === "metric" ? 4 : 5 },
        of: (T) => densityAt(T, 0),
      },
    ],
  });

const byHumidity = (system: UnitSystem) =>
  sheetOf({
    id: `humidity-${system}`,
    title: `Humidity ratio by relative humidity, ${systemName[system]}`,
    rows: temperatures[system],
    columns: [
      temperature(system),
      ...humidities.map((varphi) => ({
        words: "Humidity ratio",
        symbol: "w" as const,
        under: `at ${percent(varphi)}`,
        unit: unitIn(system, "humidityRatio"),
        digits: system === "metric" ? { decimals: 2 } : { decimals: 1 },
        of: (T: SI) => wAt(T, varphi),
      })),
    ],
  });

const drawn = roundNumbers("degC", 0, [1.5, 45]);

export default {
  id: "moist-air",
  order: 20,
  title: "Moist air",
  lead: "How much water vapour air holds when it is saturated and at every relative humidity, and what that does to its density and its enthalpy.",
  synonyms: [
    "psychrometric table",
    "humidity table",
    "grains of water",
    "absolute humidity",
    "specific humidity",
  ],
  chart: {
    title: "Humidity ratio against temperature",
    caption: "At the end of each curve stands the relative humidity.",
    x: { label: "temperature", unit: "°C", from: 0, to: 45 },
    y: { label: "humidity ratio", unit: "g/kg", from: 0, to: 70 },
    by: "φ",
    curves: [0.2, 0.4, 0.6, 0.8, 1].map((varphi) => ({
      label: percent(varphi),
      points: pointsOf(drawn, ["degC", "g/kg"], (T) => wAt(T, varphi)),
    })),
  },
  sheets: [...inBothSystems(saturated), ...inBothSystems(byHumidity)],
  says: [
    `All of it is at one barometer, ${barometer}, the standard atmosphere at sea level. The humidity ratio is the mass of vapour for each mass of dry air; compression and heating leave it as it is.`,
    "Enthalpy is counted as handbooks of air conditioning count it: zero for dry air and for liquid water at the freezing point, for each mass of dry air, with the heat that evaporated the water. Calculators here leave that heat out, and count it where water condenses.",
  ],
  caution:
    "Do not use the humidity ratios at another pressure. Air of the same temperature and relative humidity holds more vapour for each mass of dry air on a mountain, and far less once it is compressed.",
  relations: [saturationPressure, enhancementFactor, humidityRatio, enthalpyPerDryAir, density],
  numbers: ["condensation", "air-demand"],
  lessons: ["charge-density"],
} satisfies ReferenceTable as ReferenceTable;
