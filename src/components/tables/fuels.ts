import { fuelMolarMass } from "../../../calc/engine/fuel-molar-mass.ts";
import { type Fuel, fuels } from "../../../calc/engine/fuels.ts";
import { oxygenDemand } from "../../../calc/engine/oxygen-demand.ts";
import { stoichiometricRatio } from "../../../calc/engine/stoichiometric-ratio.ts";
import { type ReferenceTable, sheetOf } from "../reference-table.ts";
import { capitalised } from "../sentence.ts";

const ratioOf = ({ n_C, n_H, n_O }: Fuel): number =>
  stoichiometricRatio.compute({
    n_O2: oxygenDemand.compute({ n_C, n_H, n_O }),
    M_f: fuelMolarMass.compute({ n_C, n_H, n_O }),
  });

const all: readonly Fuel[] = Object.values(fuels);
const surpluses = [0.8, 0.85, 0.9, 1.1, 1.2, 1.3, 1.4, 1.6, 1.8, 2];
const wholeName = ({ name }: Fuel): string => capitalised(name);
const shortName = ({ name }: Fuel): string => name.replace(/,.*/, "");
const atoms = { upTo: 4 };

export default {
  id: "fuels",
  order: 100,
  title: "Fuels and their air",
  lead: "How much dry air a mass of each fuel needs to burn, from the atoms it is made of.",
  synonyms: [
    "air-fuel ratio",
    "AFR",
    "stoichiometric",
    "lambda",
    "petrol",
    "gasoline",
    "diesel",
    "ethanol",
    "methanol",
  ],
  chart: {
    title: "Dry air for each mass of fuel, against the relative air-fuel ratio",
    caption: "Left of one the mixture is rich, right of it lean.",
    x: { label: "relative air-fuel ratio λ", unit: "", from: 0.7, to: 2 },
    y: { label: "air-fuel ratio", unit: "", from: 0, to: 35 },
    curves: all.map((fuel, i) => ({
      label: shortName(fuel),
      dash: i % 2 === 0 ? ("solid" as const) : ("alternative" as const),
      points: [0.7, 2].map((lambda) => [lambda, lambda * ratioOf(fuel)] as const),
    })),
  },
  sheets: [
    sheetOf({
      id: "fuels",
      title: "Fuels",
      rows: all,
      columns: [
        { words: "Fuel", of: wholeName },
        { words: "Carbon", symbol: "n_C", unit: "1", digits: atoms, of: ({ n_C }: Fuel) => n_C },
        { words: "Hydrogen", symbol: "n_H", unit: "1", digits: atoms, of: ({ n_H }) => n_H },
        { words: "Oxygen", symbol: "n_O", unit: "1", digits: atoms, of: ({ n_O }) => n_O },
        {
          words: "Molar mass",
          symbol: "M_f",
          unit: "g/mol",
          digits: { figures: 5 },
          of: ({ n_C, n_H, n_O }) => fuelMolarMass.compute({ n_C, n_H, n_O }),
        },
        {
          words: "Oxygen needed, moles a mole",
          symbol: "n_O2",
          unit: "1",
          digits: { upTo: 6 },
          of: ({ n_C, n_H, n_O }) => oxygenDemand.compute({ n_C, n_H, n_O }),
        },
        {
          words: "Stoichiometric air-fuel ratio",
          symbol: "AFR_st",
          unit: "1",
          digits: { figures: 4 },
          of: ratioOf,
        },
      ],
    }),
    sheetOf({
      id: "mixtures",
      title: "Air-fuel ratio by the relative air-fuel ratio",
      rows: all,
      columns: [
        { words: "Fuel", of: wholeName },
        ...surpluses.map((lambda) => ({
          words: "Dry air for each mass of fuel",
          under: `λ = ${lambda}`,
          unit: "1",
          digits: { decimals: 2 },
          of: (fuel: Fuel) => lambda * ratioOf(fuel),
        })),
      ],
    }),
  ],
  says: [
    "Petrol and diesel are mixtures: their formulas are usual averages, and batches differ by a few per cent (common practice, no source); petrol with ethanol in it needs less air. The pure fuels are as exact as the composition of air.",
    "All is for dry air by mass. Vapour in the air takes room and burns nothing.",
  ],
  relations: [oxygenDemand, fuelMolarMass, stoichiometricRatio],
  sources: all
    .map(({ source }) => source)
    .filter(({ where }, i, list) => list.findIndex((one) => one.where === where) === i),
  numbers: ["air-demand", "power-air"],
  lessons: ["charge-density"],
} satisfies ReferenceTable as ReferenceTable;
