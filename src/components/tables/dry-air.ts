import { constants } from "../../../calc/constants.ts";
import { compressibility } from "../../../calc/fluids/compressibility.ts";
import { conductivity } from "../../../calc/fluids/conductivity.ts";
import { density } from "../../../calc/fluids/density.ts";
import { heatCapacity } from "../../../calc/fluids/heat-capacity.ts";
import { heatCapacityPressureEffect } from "../../../calc/fluids/heat-capacity-pressure-effect.ts";
import { heatCapacityRatio } from "../../../calc/fluids/heat-capacity-ratio.ts";
import { prandtlNumber } from "../../../calc/fluids/prandtl-number.ts";
import { secondVirial } from "../../../calc/fluids/second-virial.ts";
import { viscosity } from "../../../calc/fluids/viscosity.ts";
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

const R_m = constants.R_a.value;
const p_sl = constants.p_sl.value;

const densityAt = (T: SI, p: SI): SI => density.compute({ p, R_m, T });
const c_pOf = (T: SI): SI => heatCapacity.compute({ T, w: 0 });
const muOf = (T: SI): SI => viscosity.compute({ T });
const kOf = (T: SI): SI => conductivity.compute({ T });

const temperatures = {
  metric: roundNumbers("degC", -40, [20, 200], [50, 300]),
  us: roundNumbers("degF", -40, [40, 400], [100, 600]),
};
const pressures = {
  metric: [p_sl, ...[150, 200, 300].map((p) => toSI(p, "kPa"))],
  us: [p_sl, ...[22, 29, 44].map((p) => toSI(p, "psi"))],
};
const thick = [100, 300, 600, 1000].map((p) => toSI(p, "kPa"));

/** Where a system's numbers are too large or small for its usual unit. */
const conductivityIn = { metric: "mW/(m K)", us: "BTU/(h ft degF)" } as const;
const decimals = {
  metric: { rho: 3, c_p: 4, mu: 2, k: 2 },
  us: { rho: 4, c_p: 4, mu: 4, k: 5 },
} as const;

const properties = (system: UnitSystem) =>
  sheetOf({
    id: system,
    title: `Dry air, ${systemName[system]}`,
    rows: temperatures[system],
    columns: [
      {
        words: "Temperature",
        symbol: "T",
        unit: unitIn(system, "temperature"),
        digits: { decimals: 0 },
        of: (T) => T,
      },
      ...pressures[system].map((p) => ({
        words: "Density",
        symbol: "rho" as const,
        under: `at ${writeBound(p, unitIn(system, "pressure"))}`,
        unit: unitIn(system, "density"),
        digits: { decimals: decimals[system].rho },
        of: (T: SI) => densityAt(T, p),
      })),
      {
        words: "Heat capacity",
        symbol: "c_p",
        unit: unitIn(system, "specificHeat"),
        digits: { decimals: decimals[system].c_p },
        of: c_pOf,
      },
      {
        words: "Heat-capacity ratio",
        symbol: "kappa",
        unit: "1",
        digits: { decimals: 4 },
        of: (T) => heatCapacityRatio.compute({ c_p: c_pOf(T), R_m }),
      },
      {
        words: "Viscosity",
        symbol: "mu",
        unit: unitIn(system, "viscosity"),
        digits: { decimals: decimals[system].mu },
        of: muOf,
      },
      {
        words: "Thermal conductivity",
        symbol: "k",
        unit: conductivityIn[system],
        digits: { decimals: decimals[system].k },
        of: kOf,
      },
      {
        words: "Prandtl number",
        symbol: "Pr",
        unit: "1",
        digits: { decimals: 3 },
        of: (T) => prandtlNumber.compute({ c_p: c_pOf(T), mu: muOf(T), k: kOf(T) }),
      },
    ],
  });

const realGas = sheetOf({
  id: "real-gas",
  title: "What pressure changes",
  rows: roundNumbers("degC", -20, [40, 180]),
  columns: [
    { words: "Temperature", symbol: "T", unit: "degC", digits: { decimals: 0 }, of: (T: SI) => T },
    { words: "Temperature", symbol: "T", unit: "degF", digits: { decimals: 0 }, of: (T) => T },
    ...thick.map((p) => ({
      words: "Compressibility factor",
      symbol: "Z" as const,
      under: `at ${writeBound(p, "kPa")}`,
      unit: "1",
      digits: { decimals: 4 },
      of: (T: SI) => compressibility.compute({ B: secondVirial.compute({ T }), p, T }),
    })),
    ...thick.map((p) => ({
      words: "Heat capacity, more than at low pressure",
      symbol: "Delta_c_p" as const,
      under: `at ${writeBound(p, "kPa")}`,
      unit: "J/(kg K)",
      digits: { decimals: 1 },
      of: (T: SI) => heatCapacityPressureEffect.compute({ T, p }),
    })),
  ],
});

const drawn = roundNumbers("degC", -40, [10, 300]);

export default {
  id: "dry-air",
  order: 10,
  title: "Dry air",
  lead: "What dry air weighs, what heat it carries, how it resists flow and how it conducts heat, from winter cold to the heat behind a compressor.",
  synonyms: [
    "air properties",
    "air density table",
    "specific heat of air",
    "cp of air",
    "gamma",
    "Prandtl number",
  ],
  chart: {
    title: "Density of dry air against its temperature",
    caption: "At the end of each curve stands the absolute pressure, in kPa.",
    x: { label: "temperature", unit: "°C", from: -40, to: 300 },
    y: { label: "density", unit: "kg/m³", from: 0, to: 5 },
    by: "p",
    curves: pressures.metric.map((p) => ({
      label: writeBound(p, "kPa").replace(/\D*$/, ""),
      points: pointsOf(drawn, ["degC", "kg/m3"], (T) => densityAt(T, p)),
    })),
  },
  sheets: [...inBothSystems(properties), realGas],
  says: [
    "Density is that of an ideal gas: it grows in step with absolute pressure, so a pressure that is not in the table takes the density of one that is, times the ratio of the two. The real density is that of the ideal gas divided by the compressibility factor of the last table.",
    "Heat capacity, viscosity and conductivity are those at low pressure. What pressure adds to the heat capacity is in the last table; to viscosity and conductivity it adds little at the pressures of charge air.",
  ],
  relations: [
    density,
    compressibility,
    heatCapacity,
    heatCapacityPressureEffect,
    heatCapacityRatio,
    viscosity,
    conductivity,
    prandtlNumber,
  ],
  numbers: ["charge-density", "compressor-outlet", "duct-loss", "core-loss"],
  lessons: ["charge-density", "compression"],
} satisfies ReferenceTable as ReferenceTable;
