import { gaugePressure } from "../../../calc/atmosphere/gauge-pressure.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { constants } from "../../../calc/constants.ts";
import { boilingTemperature } from "../../../calc/fluids/water/boiling-temperature.ts";
import { compressedWaterEnthalpy } from "../../../calc/fluids/water/compressed-water-enthalpy.ts";
import { steamDensity } from "../../../calc/fluids/water/steam-density.ts";
import { steamEnthalpy } from "../../../calc/fluids/water/steam-enthalpy.ts";
import { vaporisationHeat } from "../../../calc/fluids/water/vaporisation-heat.ts";
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

const p_0 = constants.p_sl.value;

const boilsAt = (p: SI): SI => boilingTemperature.compute({ p });

const pressures = {
  metric: [
    ...roundNumbers("kPa", 20, [10, 100]),
    p_0,
    ...roundNumbers("kPa", 110, [10, 120], [20, 200], [50, 300], [100, 600], [200, 1000]),
  ],
  us: [
    ...roundNumbers("psi", 3, [1, 4], [2, 14]),
    p_0,
    ...roundNumbers("psi", 16, [2, 20], [5, 40], [10, 60], [20, 100], [50, 150]),
  ],
};
const altitudes = {
  metric: roundNumbers("m", 0, [500, 5000]),
  us: roundNumbers("ft", 0, [2000, 16_000]),
};

const byPressure = (system: UnitSystem) =>
  sheetOf({
    id: system,
    title: `Boiling by pressure, ${systemName[system]}`,
    rows: pressures[system],
    columns: [
      {
        words: "Absolute pressure",
        symbol: "p",
        unit: unitIn(system, "pressure"),
        digits: { upTo: 6 },
        of: (p) => p,
      },
      {
        words: "Gauge pressure at sea level",
        symbol: "p_g",
        unit: unitIn(system, "gaugePressure"),
        digits: { decimals: system === "metric" ? 1 : 2 },
        of: (p) => gaugePressure.compute({ p, p_0 }),
      },
      {
        words: "Boiling temperature",
        symbol: "T_sat",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 2 },
        of: boilsAt,
      },
      {
        words: "Heat of vaporisation",
        symbol: "h_fg",
        unit: unitIn(system, "specificEnergy"),
        digits: { decimals: 1 },
        of: (p) => {
          const T = boilsAt(p);
          return vaporisationHeat.compute({
            h_g: steamEnthalpy.compute({ T, p }),
            h_l: compressedWaterEnthalpy.compute({ T, p }),
          });
        },
      },
      {
        words: "Density of the steam",
        symbol: "rho",
        unit: unitIn(system, "density"),
        digits: { figures: 4 },
        of: (p) => steamDensity.compute({ T: boilsAt(p), p }),
      },
    ],
  });

const byAltitude = (system: UnitSystem) =>
  sheetOf({
    id: `altitude-${system}`,
    title: `Boiling in an open vessel by altitude, ${systemName[system]}`,
    rows: altitudes[system],
    columns: [
      {
        words: "Geopotential altitude",
        symbol: "H",
        unit: unitIn(system, "altitude"),
        digits: { decimals: 0 },
        of: (H) => H,
      },
      {
        words: "Standard barometer",
        symbol: "p_std",
        unit: unitIn(system, "pressure"),
        digits: { figures: 5 },
        of: (H) => standardPressure.compute({ H }),
      },
      {
        words: "Boiling temperature",
        symbol: "T_sat",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 2 },
        of: (H) => boilsAt(standardPressure.compute({ H })),
      },
    ],
  });

const drawn = roundNumbers("kPa", 20, [10, 100], [20, 400]);

export default {
  id: "boiling",
  order: 50,
  title: "Boiling of water",
  lead: "At what temperature water boils under a pressure or at an altitude, and how much heat that takes.",
  synonyms: [
    "boiling point",
    "radiator cap",
    "coolant boils",
    "saturation temperature",
    "steam table",
    "boil over",
  ],
  chart: {
    title: "Boiling temperature of water against absolute pressure",
    caption: "Water is liquid below the curve and steam above it.",
    x: { label: "absolute pressure", unit: "kPa", from: 0, to: 400 },
    y: { label: "boiling temperature", unit: "°C", from: 40, to: 160 },
    curves: [{ label: "boils", points: pointsOf(drawn, ["kPa", "degC"], boilsAt) }],
  },
  sheets: [...inBothSystems(byPressure), ...inBothSystems(byAltitude)],
  says: [
    `Gauge pressure is counted from ${writeBound(p_0, "kPa")} (${writeBound(p_0, "psi")}), the standard atmosphere at sea level; below zero it is a vacuum. A cap holds its pressure above the barometer of the day, so on a mountain the water in the system boils earlier under the same cap.`,
    "It is pure water that boils everywhere at once. At a hot wall bubbles form earlier, and antifreeze boils later.",
  ],
  caution:
    "Steam burns worse than water of the same temperature, since it gives off its heat of vaporisation on the skin. Let a cooling system cool before you open it.",
  relations: [boilingTemperature, vaporisationHeat, steamDensity, standardPressure],
  numbers: ["water-properties", "barometer"],
  lessons: ["pressures"],
} satisfies ReferenceTable as ReferenceTable;
