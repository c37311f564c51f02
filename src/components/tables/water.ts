import { prandtlNumber } from "../../../calc/fluids/prandtl-number.ts";
import { atmosphericWaterConductivity } from "../../../calc/fluids/water/atmospheric-water-conductivity.ts";
import { atmosphericWaterDensity } from "../../../calc/fluids/water/atmospheric-water-density.ts";
import { atmosphericWaterHeatCapacity } from "../../../calc/fluids/water/atmospheric-water-heat-capacity.ts";
import { atmosphericWaterViscosity } from "../../../calc/fluids/water/atmospheric-water-viscosity.ts";
import { compressedWaterConductivity } from "../../../calc/fluids/water/compressed-water-conductivity.ts";
import { compressedWaterDensity } from "../../../calc/fluids/water/compressed-water-density.ts";
import { compressedWaterHeatCapacity } from "../../../calc/fluids/water/compressed-water-heat-capacity.ts";
import { ATMOSPHERIC_UP_TO } from "../../../calc/fluids/water/liquid-water.ts";
import { waterState } from "../../../calc/fluids/water/water.ts";
import { waterViscosity } from "../../../calc/fluids/water/water-viscosity.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { toSI } from "../../../calc/quantity/units.ts";
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

/** Round numbers of a system of units, of which `hot` needs pressure to stay liquid. */
const shown = {
  metric: {
    cold: roundNumbers("degC", 0, [10, 110]),
    hot: roundNumbers("degC", 90, [10, 130]),
    p: toSI(300, "kPa"),
    decimals: { rho: 1, c_p: 4, mu: 4, k: 4 },
  },
  us: {
    cold: roundNumbers("degF", 32, [8, 40], [20, 220]),
    hot: roundNumbers("degF", 200, [20, 260]),
    p: toSI(45, "psi"),
    decimals: { rho: 2, c_p: 4, mu: 3, k: 4 },
  },
} as const;

interface Properties {
  readonly T: SI;
  readonly rho: SI;
  readonly c_p: SI;
  readonly mu: SI;
  readonly k: SI;
}

const cold = (T: SI): Properties => ({
  T,
  rho: atmosphericWaterDensity.compute({ T }),
  c_p: atmosphericWaterHeatCapacity.compute({ T }),
  mu: atmosphericWaterViscosity.compute({ T }),
  k: atmosphericWaterConductivity.compute({ T }),
});

const sheet = (system: UnitSystem, names: { id: string; title: string }, rows: readonly Properties[]) => {
  const { decimals } = shown[system];
  return sheetOf({
    ...names,
    rows,
    columns: [
      {
        words: "Temperature",
        symbol: "T",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 0 },
        of: ({ T }) => T,
      },
      {
        words: "Density",
        symbol: "rho",
        unit: unitIn(system, "density"),
        digits: { decimals: decimals.rho },
        of: ({ rho }) => rho,
      },
      {
        words: "Heat capacity",
        symbol: "c_p",
        unit: unitIn(system, "specificHeat"),
        digits: { decimals: decimals.c_p },
        of: ({ c_p }) => c_p,
      },
      {
        words: "Viscosity",
        symbol: "mu",
        unit: system === "metric" ? "mPa s" : unitIn(system, "viscosity"),
        digits: { decimals: decimals.mu },
        of: ({ mu }) => mu,
      },
      {
        words: "Thermal conductivity",
        symbol: "k",
        unit: unitIn(system, "conductivity"),
        digits: { decimals: decimals.k },
        of: ({ k }) => k,
      },
      {
        words: "Prandtl number",
        symbol: "Pr",
        unit: "1",
        digits: { decimals: 2 },
        of: ({ c_p, mu, k }) => prandtlNumber.compute({ c_p, mu, k }),
      },
    ],
  });
};

const drawn = roundNumbers("degC", 0, [5, 110]);
const at20 = cold(toSI(20, "degC"));
const overThatAt20 = (label: string, of: (water: Properties) => SI) => ({
  label,
  points: pointsOf(drawn, ["degC", "1"], (T) => of(cold(T)) / of(at20)),
});

export default {
  id: "water",
  order: 40,
  title: "Liquid water",
  lead: "What water weighs, what heat it carries, how it resists flow and how it conducts heat, from freezing to the hottest coolant under pressure.",
  synonyms: [
    "coolant properties",
    "density of water",
    "viscosity of water",
    "specific heat of water",
    "cooling water",
  ],
  chart: {
    title: "Properties of water, each over its value at 20 °C",
    caption: "Viscosity falls to a quarter where all else hardly moves: warm water flows and cools better.",
    x: { label: "temperature", unit: "°C", from: 0, to: 110 },
    y: { label: "over the value at 20 °C", unit: "", from: 0, to: 2 },
    curves: [
      overThatAt20("density", ({ rho }) => rho),
      { ...overThatAt20("heat capacity", ({ c_p }) => c_p), dash: "alternative" },
      overThatAt20("viscosity", ({ mu }) => mu),
      overThatAt20("conductivity", ({ k }) => k),
    ],
  },
  sheets: [
    ...inBothSystems((system) =>
      sheet(
        system,
        { id: system, title: `Water near atmospheric pressure, ${systemName[system]}` },
        shown[system].cold.map(cold),
      ),
    ),
    ...inBothSystems((system) => {
      const { hot, p } = shown[system];
      const title = `Hot water at ${writeBound(p, unitIn(system, "pressure"))} absolute, ${systemName[system]}`;
      return sheet(
        system,
        { id: `hot-${system}`, title },
        hot.map((T) => ({ T, ...waterState({ T, p }) })),
      );
    }),
  ],
  says: [
    `The first tables are for pressures up to ${writeBound(ATMOSPHERIC_UP_TO, "kPa", {}, 3)} (${writeBound(ATMOSPHERIC_UP_TO, "psi", {}, 3)}). Water that is hotter than its boiling temperature needs the higher of these pressures to stay liquid: see the table of boiling. More pressure changes little, as the last tables show.`,
    "It is pure water. Antifreeze makes it thicker, carry less heat and conduct worse, and none of these numbers hold for it.",
  ],
  caution:
    "Water above its boiling temperature at atmospheric pressure flashes to steam when its pressure is let go. Let a cooling system cool before you open it.",
  relations: [
    atmosphericWaterDensity,
    atmosphericWaterHeatCapacity,
    atmosphericWaterViscosity,
    atmosphericWaterConductivity,
    compressedWaterDensity,
    compressedWaterHeatCapacity,
    waterViscosity,
    compressedWaterConductivity,
    prandtlNumber,
  ],
  numbers: ["water-properties", "water-flow"],
  lessons: ["effectiveness"],
} satisfies ReferenceTable as ReferenceTable;
