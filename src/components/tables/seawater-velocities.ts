import { type SeawaterVelocity, seawaterVelocities } from "../../../calc/circuit/seawater-velocities.ts";
import { constants } from "../../../calc/constants.ts";
import { boreArea } from "../../../calc/flow/bore-area.ts";
import { ductSpeed } from "../../../calc/flow/duct-speed.ts";
import { massFlow } from "../../../calc/fluids/mass-flow.ts";
import { seawaterDensity } from "../../../calc/fluids/seawater-density.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { toSI } from "../../../calc/quantity/units.ts";
import { writeBound } from "../../../calc/quantity/write.ts";
import {
  inBothSystems,
  type ReferenceTable,
  roundNumbers,
  sheetOf,
  systemName,
  unitIn,
} from "../reference-table.ts";

const FIGURES = 2;

const byMaterial = (system: UnitSystem) => {
  const unit = unitIn(system, "speed");
  const speed = (c: SI) => writeBound(c, unit, {}, FIGURES);
  const most = ({ most: bounds }: SeawaterVelocity): string => {
    if (bounds === undefined) return "not set by wear";
    const [from, to] = bounds;
    return from === to
      ? speed(from)
      : `${writeBound(from, unit, {}, FIGURES).split("\u00a0")[0]} to ${speed(to)}`;
  };
  return sheetOf({
    id: system,
    title: `Speed of the water in tubes by their material, ${systemName[system]}`,
    rows: seawaterVelocities,
    columns: [
      { words: "Tubes of", of: ({ material }) => material },
      { words: "At least", of: ({ least }) => (least === undefined ? "none stated" : speed(least)) },
      { words: "At most", of: most },
      { words: "Open seawater", of: ({ isForSeawater }) => (isForSeawater ? "yes" : "no") },
    ],
  });
};

const whatElse = sheetOf({
  id: "materials",
  title: "What else holds of each material",
  rows: seawaterVelocities,
  columns: [
    { words: "Tubes of", of: ({ material }) => material },
    { words: "What else", of: ({ says }) => says },
  ],
});

const sea = { T: 288.15, S: 0.035, p: constants.p_sl.value };
const rho = seawaterDensity.compute(sea);
const speedIn = (d: SI, V_w: SI): SI =>
  ductSpeed.compute({ m_a: massFlow.compute({ rho, V_dot: V_w }), rho, A: boreArea.compute({ d }) });

const bores = {
  metric: {
    unit: "mm",
    sizes: [10, 12, 16, 20, 25],
    flows: roundNumbers("L/min", 2, [2, 20], [5, 40]),
  },
  us: {
    unit: "in",
    sizes: [0.375, 0.5, 0.625, 0.75, 1],
    flows: roundNumbers("gal/min", 0.5, [0.5, 4], [1, 10]),
  },
} as const;

const byFlow = (system: UnitSystem) => {
  const { unit, sizes, flows } = bores[system];
  return sheetOf({
    id: `flow-${system}`,
    title: `Speed in one tube by its flow, ${systemName[system]}`,
    rows: flows,
    columns: [
      {
        words: "Flow in one tube",
        symbol: "V_w",
        unit: unitIn(system, "liquidFlow"),
        digits: { upTo: 4 },
        of: (V: SI) => V,
      },
      ...sizes.map((size) => ({
        words: "Speed in a bore",
        symbol: "c_w" as const,
        under: `of ${writeBound(toSI(size, unit), unit)}`,
        unit: unitIn(system, "speed"),
        digits: { decimals: 2 },
        of: (V: SI) => speedIn(toSI(size, unit), V),
      })),
    ],
  });
};

const FASTEST = 5;
const LARGEST = 40;

/** A straight line from rest to the edge of the chart. */
function lineOf(d: SI): readonly (readonly [number, number])[] {
  const atEdge = speedIn(d, toSI(LARGEST, "L/min"));
  const part = Math.min(1, FASTEST / atEdge);
  return [
    [0, 0],
    [part * LARGEST, part * atEdge],
  ];
}

export default {
  id: "seawater-velocities",
  order: 62,
  title: "Speeds of seawater",
  lead: "How slow and how fast seawater may run in tubes, by the metal that they are made of.",
  synonyms: [
    "seawater velocity",
    "tube velocity",
    "erosion",
    "impingement",
    "copper-nickel",
    "cupronickel",
    "titanium tubes",
    "silting",
    "raw water speed",
  ],
  chart: {
    title: "Speed in one tube against its flow",
    caption:
      "At the end of each line stands the bore. Divide the flow of the cooler by the tubes that share it.",
    x: { label: "flow in one tube", unit: "L/min", from: 0, to: LARGEST },
    y: { label: "speed", unit: "m/s", from: 0, to: FASTEST },
    by: "d",
    curves: [10, 12, 16, 20, 25].map((mm, i) => ({
      label: `${mm} mm`,
      dash: i % 2 === 0 ? ("solid" as const) : ("alternative" as const),
      points: lineOf(toSI(mm, "mm")),
    })),
  },
  sheets: [...inBothSystems(byMaterial), whatElse, ...inBothSystems(byFlow)],
  says: [
    "The speeds by material are common practice, and have no source that could be named. Makers differ, and where they do, both ends stand in the table. The maker of the tubes decides.",
    "Below the least speed silt settles and growth takes hold, and under them the metal pits. Above the most, the water wears away the film that protects the metal; bubbles and sand do it sooner.",
    "What counts is the fastest tube and its inlet, not the mean. A header that feeds some tubes more than others, or a tube that is half plugged, brings wear at a mean that looks well within bounds.",
    "Metals that touch the same seawater corrode each other. Aluminium behind a copper alloy is eaten even without touching it. Deposits form on the wall where it is hot, well below boiling (common practice, no source).",
  ],
  caution:
    "A tube that is worn through can let seawater into the charge air, and from there into the engine. Look for water in the drain of the air side, and stop when there is any.",
  relations: [boreArea, ductSpeed, massFlow, seawaterDensity],
  numbers: ["coolant-properties", "cooler-rating"],
  lessons: ["seawater"],
} satisfies ReferenceTable as ReferenceTable;
