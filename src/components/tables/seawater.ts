import { constants } from "../../../calc/constants.ts";
import { seawaterDensity } from "../../../calc/fluids/seawater-density.ts";
import { seawaterHeatCapacity } from "../../../calc/fluids/seawater-heat-capacity.ts";
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

const p = constants.p_sl.value;
const densityAt = (T: SI, S: number): SI => seawaterDensity.compute({ T, S, p });

const temperatures = {
  metric: roundNumbers("degC", 0, [10, 60]),
  us: roundNumbers("degF", 32, [8, 40], [20, 140]),
};
const salinities = [0, 0.01, 0.02, 0.035, 0.04];
const percent = (S: number): string => writeBound(S, "%");

const properties = (system: UnitSystem) =>
  sheetOf({
    id: system,
    title: `Seawater by its salinity, ${systemName[system]}`,
    rows: temperatures[system],
    columns: [
      {
        words: "Temperature",
        symbol: "T",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 0 },
        of: (T) => T,
      },
      ...salinities.map((S) => ({
        words: "Density",
        symbol: "rho" as const,
        under: percent(S),
        unit: unitIn(system, "density"),
        digits: { decimals: system === "metric" ? 1 : 2 },
        of: (T: SI) => densityAt(T, S),
      })),
      ...salinities.map((S) => ({
        words: "Heat capacity",
        symbol: "c_p" as const,
        under: percent(S),
        unit: unitIn(system, "specificHeat"),
        digits: { decimals: system === "metric" ? 3 : 4 },
        of: (T: SI) => seawaterHeatCapacity.compute({ T, S }),
      })),
    ],
  });

const drawn = roundNumbers("degC", 0, [4, 60]);

export default {
  id: "seawater",
  order: 60,
  title: "Seawater",
  lead: "What seawater weighs and what heat it carries, by its temperature and by how salty it is.",
  synonyms: ["sea water", "salt water", "raw water", "marine cooling", "brackish water", "salinity"],
  chart: {
    title: "Density of seawater against its temperature",
    caption: "At the end of each curve stands the salinity, mass of salt in a mass of seawater.",
    x: { label: "temperature", unit: "°C", from: 0, to: 60 },
    y: { label: "density", unit: "kg/m³", from: 980, to: 1040 },
    by: "S",
    curves: [0, 0.01, 0.02, 0.03, 0.04].map((S) => ({
      label: percent(S),
      points: pointsOf(drawn, ["degC", "kg/m3"], (T) => densityAt(T, S)),
    })),
  },
  sheets: inBothSystems(properties),
  says: [
    "Salinity is the mass of salt in a mass of seawater. Oceans have about 3.5 % (common practice, no source); enclosed warm seas have more, estuaries less. The numbers are for the surface; a few metres of depth change nothing.",
    "Salty water is a little heavier and carries a little less heat for each kilogram, so the same volume flow carries nearly the same heat.",
  ],
  caution:
    "Seawater that is warmed too far in a cooler leaves scale. How warm it may leave is for the maker of the cooler to say, not for this table.",
  relations: [seawaterDensity, seawaterHeatCapacity],
  numbers: ["cooler-rating", "water-flow"],
  lessons: ["effectiveness"],
} satisfies ReferenceTable as ReferenceTable;
