import { geometricAltitude } from "../../../calc/atmosphere/geometric-altitude.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { standardTemperature } from "../../../calc/atmosphere/standard-temperature.ts";
import { constants } from "../../../calc/constants.ts";
import { density } from "../../../calc/fluids/density.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import {
  inBothSystems,
  pointsOf,
  type ReferenceTable,
  roundNumbers,
  sheetOf,
  systemName,
  unitIn,
} from "../reference-table.ts";

const pressureAt = (H: SI): SI => standardPressure.compute({ H });
const temperatureAt = (H: SI): SI => standardTemperature.compute({ H });
const densityAt = (H: SI): SI =>
  density.compute({ p: pressureAt(H), R_m: constants.R_sa.value, T: temperatureAt(H) });

const altitudes = {
  metric: roundNumbers("m", -500, [500, 11_000]),
  us: roundNumbers("ft", -1000, [1000, 10_000], [2000, 36_000]),
};

const atmosphere = (system: UnitSystem) =>
  sheetOf({
    id: system,
    title: `Standard atmosphere, ${systemName[system]}`,
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
        words: "Elevation",
        symbol: "z",
        unit: unitIn(system, "altitude"),
        digits: { decimals: 0 },
        of: (H) => geometricAltitude.compute({ H }),
      },
      {
        words: "Pressure",
        symbol: "p_std",
        unit: unitIn(system, "pressure"),
        digits: { decimals: system === "metric" ? 3 : 4 },
        of: pressureAt,
      },
      ...(system === "us"
        ? [
            {
              words: "Pressure",
              symbol: "p_std" as const,
              unit: "inHg",
              digits: { decimals: 3 },
              of: pressureAt,
            },
          ]
        : []),
      {
        words: "Temperature",
        symbol: "T_std",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 2 },
        of: temperatureAt,
      },
      {
        words: "Density",
        symbol: "rho",
        unit: unitIn(system, "density"),
        digits: { decimals: system === "metric" ? 4 : 5 },
        of: densityAt,
      },
      {
        words: "Density over that at sea level",
        unit: "1",
        digits: { decimals: 4 },
        of: (H) => densityAt(H) / densityAt(0),
      },
    ],
  });

const drawn = roundNumbers("m", 0, [1000, 11_000]);
const overSeaLevel = (label: string, of: (H: SI) => SI) => ({
  label,
  points: pointsOf(drawn, ["m", "1"], (H) => of(H) / of(0)),
});

export default {
  id: "standard-atmosphere",
  order: 70,
  title: "Standard atmosphere",
  lead: "The pressure, temperature and density that standards agree on for each altitude up to 11 km, to compare engines and sites by.",
  synonyms: [
    "ISA",
    "altitude table",
    "density altitude",
    "pressure altitude",
    "air density at altitude",
    "elevation",
  ],
  chart: {
    title: "The standard atmosphere over its values at sea level",
    caption:
      "Temperatures are absolute. Density falls more slowly than pressure, since the air grows colder too.",
    x: { label: "geopotential altitude", unit: "m", from: 0, to: 11_000 },
    y: { label: "over the value at sea level", unit: "", from: 0, to: 1 },
    curves: [
      overSeaLevel("temperature", temperatureAt),
      overSeaLevel("density", densityAt),
      overSeaLevel("pressure", pressureAt),
    ],
  },
  sheets: inBothSystems(atmosphere),
  says: [
    "It is an agreed average of dry air and no forecast: the barometer of a day can stand several kilopascals off, and a summer day is far warmer. Geopotential altitude counts each metre as if gravity did not weaken; elevation is what a map shows.",
  ],
  relations: [standardPressure, standardTemperature, geometricAltitude, density],
  numbers: ["barometer", "charge-density"],
  lessons: ["pressures"],
} satisfies ReferenceTable as ReferenceTable;
