import { ethyleneGlycolConductivity } from "../../../calc/fluids/glycol/ethylene-glycol-conductivity.ts";
import { ethyleneGlycolDensity } from "../../../calc/fluids/glycol/ethylene-glycol-density.ts";
import { ethyleneGlycolFreezing } from "../../../calc/fluids/glycol/ethylene-glycol-freezing.ts";
import { ethyleneGlycolHeatCapacity } from "../../../calc/fluids/glycol/ethylene-glycol-heat-capacity.ts";
import { ethyleneGlycolViscosity } from "../../../calc/fluids/glycol/ethylene-glycol-viscosity.ts";
import {
  type Glycol,
  glycolConductivities,
  glycolDensities,
  glycolFreezings,
  glycolHeatCapacities,
  glycolViscosities,
  massFractionOf,
  volumeFractionOf,
} from "../../../calc/fluids/glycol/glycol.ts";
import { glycolMassFraction } from "../../../calc/fluids/glycol/glycol-mass-fraction.ts";
import { glycolVolumeFraction } from "../../../calc/fluids/glycol/glycol-volume-fraction.ts";
import { propyleneGlycolConductivity } from "../../../calc/fluids/glycol/propylene-glycol-conductivity.ts";
import { propyleneGlycolDensity } from "../../../calc/fluids/glycol/propylene-glycol-density.ts";
import { propyleneGlycolFreezing } from "../../../calc/fluids/glycol/propylene-glycol-freezing.ts";
import { propyleneGlycolHeatCapacity } from "../../../calc/fluids/glycol/propylene-glycol-heat-capacity.ts";
import { propyleneGlycolViscosity } from "../../../calc/fluids/glycol/propylene-glycol-viscosity.ts";
import { prandtlNumber } from "../../../calc/fluids/prandtl-number.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { writeBound } from "../../../calc/quantity/write.ts";
import {
  type ColumnOf,
  inBothSystems,
  pointsOf,
  type ReferenceTable,
  roundNumbers,
  type Sheet,
  sheetOf,
  systemName,
  unitIn,
} from "../reference-table.ts";

const names = { "ethylene-glycol": "Ethylene glycol", "propylene-glycol": "Propylene glycol" } as const;
const glycols = ["ethylene-glycol", "propylene-glycol"] as const satisfies readonly Glycol[];

/** Up to the end of what was measured: by volume a little earlier than by mass. */
const volumes = roundNumbers("%", 5, [5, 55]);
const masses = roundNumbers("%", 5, [5, 60]);

const freezes = (glycol: Glycol, x_g: SI): SI => glycolFreezings[glycol].compute({ x_g });

/** What a fraction of each glycol is in the other way to say it, and where it freezes. */
function freezingSheet(system: UnitSystem, given: "volume" | "mass"): Sheet {
  const isVolume = given === "volume";
  const massOf = (glycol: Glycol, part: SI) => (isVolume ? massFractionOf(glycol, part) : part);
  return sheetOf({
    id: `by-${given}-${system}`,
    title: `Freezing point by ${given} of glycol, ${systemName[system]}`,
    rows: isVolume ? volumes : masses,
    columns: [
      {
        words: isVolume ? "Glycol by volume" : "Glycol by mass",
        symbol: isVolume ? "phi_g" : "x_g",
        unit: "%",
        digits: { decimals: 0 },
        of: (part: SI) => part,
      },
      ...glycols.map((glycol) => ({
        words: isVolume ? "That is by mass" : "That is by volume",
        symbol: isVolume ? ("x_g" as const) : ("phi_g" as const),
        under: names[glycol],
        unit: "%",
        digits: { decimals: 1 },
        of: (part: SI) => (isVolume ? massOf(glycol, part) : volumeFractionOf(glycol, part)),
      })),
      ...glycols.map((glycol) => ({
        words: "Freezes at",
        symbol: "T_f" as const,
        under: names[glycol],
        unit: unitIn(system, "temperature"),
        digits: { decimals: 1 },
        of: (part: SI) => freezes(glycol, massOf(glycol, part)),
      })),
    ],
  });
}

const fractions = roundNumbers("%", 10, [10, 50]);
const temperatures = {
  metric: roundNumbers("degC", 0, [20, 40], [40, 80]),
  us: roundNumbers("degF", 32, [36, 104], [72, 176]),
};

interface Mixture {
  readonly phi_g: SI;
  readonly x_g: SI;
  readonly T: SI;
}

function propertySheet(system: UnitSystem, glycol: Glycol): Sheet {
  const at = ({ T, x_g }: Mixture) => ({ T, x_g });
  const c_p = (mixture: Mixture) => glycolHeatCapacities[glycol].compute(at(mixture));
  const mu = (mixture: Mixture) => glycolViscosities[glycol].compute(at(mixture));
  const k = (mixture: Mixture) => glycolConductivities[glycol].compute(at(mixture));
  const figures = { figures: 4 } as const;
  const columns: readonly ColumnOf<Mixture>[] = [
    { words: "Glycol by volume", of: ({ phi_g }) => writeBound(phi_g, "%") },
    { words: "By mass", symbol: "x_g", unit: "%", digits: { decimals: 1 }, of: ({ x_g }) => x_g },
    {
      words: "Density",
      symbol: "rho",
      unit: unitIn(system, "density"),
      digits: { decimals: system === "metric" ? 1 : 2 },
      of: (mixture) => glycolDensities[glycol].compute(at(mixture)),
    },
    {
      words: "Heat capacity",
      symbol: "c_p",
      unit: unitIn(system, "specificHeat"),
      digits: figures,
      of: c_p,
    },
    { words: "Viscosity", symbol: "mu", unit: unitIn(system, "viscosity"), digits: figures, of: mu },
    {
      words: "Thermal conductivity",
      symbol: "k",
      unit: unitIn(system, "conductivity"),
      digits: figures,
      of: k,
    },
    {
      words: "Prandtl number",
      symbol: "Pr",
      unit: "1",
      digits: { figures: 3 },
      of: (mixture) => prandtlNumber.compute({ c_p: c_p(mixture), mu: mu(mixture), k: k(mixture) }),
    },
  ];
  const bodies = temperatures[system].map((T) => ({
    title: `at ${writeBound(T, unitIn(system, "temperature"))}`,
    rows: fractions.map((phi_g) =>
      columns.map(({ of }) => of({ phi_g, x_g: massFractionOf(glycol, phi_g), T })),
    ),
  }));
  return {
    id: `${glycol}-${system}`,
    title: `${names[glycol]} in water, ${systemName[system]}`,
    columns: columns.map(({ of, ...column }) => column),
    bodies,
  };
}

const drawn = roundNumbers("%", 0, [2, 56]);

export default {
  id: "coolant-mixtures",
  order: 55,
  title: "Coolant mixtures",
  lead: "When water with ethylene or propylene glycol freezes, and what it weighs, carries and resists.",
  synonyms: [
    "antifreeze",
    "glycol",
    "freezing point",
    "freeze protection",
    "coolant",
    "MEG",
    "MPG",
    "50/50",
    "mixing ratio",
  ],
  chart: {
    title: "Freezing temperature against the glycol by volume",
    caption: "Below its curve a mixture holds ice.",
    x: { label: "glycol by volume", unit: "%", from: 0, to: 60 },
    y: { label: "freezing temperature", unit: "°C", from: -50, to: 10 },
    curves: glycols.map((glycol, i) => ({
      label: glycol === "ethylene-glycol" ? "ethylene" : "propylene",
      dash: i === 0 ? ("solid" as const) : ("alternative" as const),
      points: pointsOf(drawn, ["%", "degC"], (phi) => freezes(glycol, massFractionOf(glycol, phi))),
    })),
  },
  sheets: [
    ...inBothSystems((system) => [
      freezingSheet(system, "volume"),
      freezingSheet(system, "mass"),
      ...glycols.map((glycol) => propertySheet(system, glycol)),
    ]),
  ],
  says: [
    "By volume is how a shop pours: the volume of glycol over the volumes of glycol and water before they are mixed, both at room temperature. By mass is how properties are measured. Of ethylene glycol the two differ by some per cent.",
    "At the freezing temperature the first crystals form, and what is left is richer. The numbers are for pure glycol and pure water: what is sold has inhibitors in it, so its own sheet comes first. When a mixture boils is not in the table; fresh water boils earlier.",
  ],
  caution:
    "Ethylene glycol is poisonous and tastes sweet. Keep it from people and animals, and dispose of it as local rules say.",
  relations: [
    ethyleneGlycolFreezing,
    ethyleneGlycolDensity,
    ethyleneGlycolHeatCapacity,
    ethyleneGlycolViscosity,
    ethyleneGlycolConductivity,
    propyleneGlycolFreezing,
    propyleneGlycolDensity,
    propyleneGlycolHeatCapacity,
    propyleneGlycolViscosity,
    propyleneGlycolConductivity,
    glycolMassFraction,
    glycolVolumeFraction,
    prandtlNumber,
  ],
  numbers: ["coolant-properties"],
  lessons: ["seawater", "standing-in"],
} satisfies ReferenceTable as ReferenceTable;
