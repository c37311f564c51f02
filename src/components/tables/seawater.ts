import { constants } from "../../../calc/constants.ts";
import { prandtlNumber } from "../../../calc/fluids/prandtl-number.ts";
import { seawaterConductivity } from "../../../calc/fluids/seawater-conductivity.ts";
import { seawaterDensity } from "../../../calc/fluids/seawater-density.ts";
import { seawaterFreezing } from "../../../calc/fluids/seawater-freezing.ts";
import { seawaterHeatCapacity } from "../../../calc/fluids/seawater-heat-capacity.ts";
import { seawaterViscosity } from "../../../calc/fluids/seawater-viscosity.ts";
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

const OCEAN = 0.035;

const inOcean = (system: UnitSystem) => {
  const of = (T: SI) => ({ T, S: OCEAN });
  const figures = { figures: 4 } as const;
  return sheetOf({
    id: `ocean-${system}`,
    title: `Seawater of ${percent(OCEAN)}, ${systemName[system]}`,
    rows: temperatures[system],
    columns: [
      {
        words: "Temperature",
        symbol: "T",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 0 },
        of: (T: SI) => T,
      },
      {
        words: "Density",
        symbol: "rho",
        unit: unitIn(system, "density"),
        digits: { decimals: system === "metric" ? 1 : 2 },
        of: (T) => densityAt(T, OCEAN),
      },
      {
        words: "Heat capacity",
        symbol: "c_p",
        unit: unitIn(system, "specificHeat"),
        digits: figures,
        of: (T) => seawaterHeatCapacity.compute(of(T)),
      },
      {
        words: "Viscosity",
        symbol: "mu",
        unit: unitIn(system, "viscosity"),
        digits: figures,
        of: (T) => seawaterViscosity.compute(of(T)),
      },
      {
        words: "Thermal conductivity",
        symbol: "k",
        unit: unitIn(system, "conductivity"),
        digits: figures,
        of: (T) => seawaterConductivity.compute(of(T)),
      },
      {
        words: "Prandtl number",
        symbol: "Pr",
        unit: "1",
        digits: { figures: 3 },
        of: (T) =>
          prandtlNumber.compute({
            c_p: seawaterHeatCapacity.compute(of(T)),
            mu: seawaterViscosity.compute(of(T)),
            k: seawaterConductivity.compute(of(T)),
          }),
      },
    ],
  });
};

const freezesAt = (S: number): SI => seawaterFreezing.compute({ S, p });

const freezing = (system: UnitSystem) =>
  sheetOf({
    id: `freezing-${system}`,
    title: `Freezing point of seawater by its salinity, ${systemName[system]}`,
    rows: roundNumbers("%", 0, [0.5, 4]),
    columns: [
      { words: "Salinity", symbol: "S", unit: "%", digits: { decimals: 1 }, of: (S: SI) => S },
      {
        words: "Freezes at",
        symbol: "T_f",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 2 },
        of: freezesAt,
      },
    ],
  });

const drawn = roundNumbers("degC", 0, [4, 60]);

export default {
  id: "seawater",
  order: 60,
  title: "Seawater",
  lead: "What seawater weighs, carries and resists by its temperature and by how salty it is, and when it freezes.",
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
  sheets: [...inBothSystems(properties), ...inBothSystems(inOcean), ...inBothSystems(freezing)],
  says: [
    "Salinity is the mass of salt in a mass of seawater. Oceans have about 3.5 % (common practice, no source); enclosed warm seas have more, estuaries less. The numbers are for the surface; a few metres of depth change nothing.",
    "Salty water is a little heavier and carries a little less heat for each kilogram, so the same volume flow carries nearly the same heat.",
  ],
  caution:
    "Seawater that is warmed too far in a cooler leaves scale. How warm it may leave is for the maker of the cooler to say, not for this table.",
  relations: [
    seawaterDensity,
    seawaterHeatCapacity,
    seawaterViscosity,
    seawaterConductivity,
    prandtlNumber,
    seawaterFreezing,
  ],
  numbers: ["coolant-properties", "cooler-rating", "water-flow"],
  lessons: ["seawater"],
} satisfies ReferenceTable as ReferenceTable;
