import { hydraulicPower } from "../../../calc/circuit/pump/hydraulic-power.ts";
import { leftForValve } from "../../../calc/circuit/pump/left-for-valve.ts";
import { pressureOfHead } from "../../../calc/circuit/pump/pressure-of-head.ts";
import { pumpHead } from "../../../calc/circuit/pump/pump-head.ts";
import { restLoss } from "../../../calc/circuit/pump/rest-loss.ts";
import { authority } from "../../../calc/circuit/valve/authority.ts";
import { chokedDifference } from "../../../calc/circuit/valve/choked-difference.ts";
import { criticalRatioFactor } from "../../../calc/circuit/valve/critical-ratio-factor.ts";
import { valveFlow } from "../../../calc/circuit/valve/valve-flow.ts";
import { lossAtFlow } from "../../../calc/flow/loss-at-flow.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import type { Choice, Field } from "../engine/calculator.ts";
import { pipeInputs, pipeRelations } from "./pipe.ts";
import { pointInputs } from "./points.ts";

export const withPump = { source: ["pump"] } as const;
const withTank = { source: ["tank"] } as const;

interface PumpStarts {
  readonly start: "three" | "four";
  readonly flows: readonly SI[];
  readonly heads: readonly SI[];
}

/** Fields for three to five points of a pump's curve. */
export const pumpPoints = ({ start, flows, heads }: PumpStarts) =>
  pointInputs({
    count: "pump_points",
    label: "Points of the pump’s curve",
    line: "point",
    from: "three",
    to: "five",
    start,
    when: withPump,
    x: {
      id: "V_P",
      label: "Flow",
      symbol: "V_w",
      kind: "liquidFlow",
      limits: [0, 10],
      typical: [0, 0.1],
      starts: flows,
      help: "From the maker’s sheet or a test, in any order. The curve through them is a parabola.",
    },
    y: {
      id: "h_P",
      label: "Head",
      symbol: "h_P",
      kind: "head",
      limits: [0, 5000],
      typical: [0, 200],
      starts: heads,
    },
  });

/** What drives water through a circuit. */
export const sourceInputs = {
  source: {
    label: "Driven by",
    options: {
      pump: "a pump",
      head: "a tank or main of constant head",
      tank: "a tank whose level falls",
    },
    start: "pump",
    help: "",
    heading: "What drives the water",
  } as Choice,
  ...pumpPoints({
    start: "four",
    flows: [0, 6 / 3600, 12 / 3600, 18 / 3600, 22 / 3600],
    heads: [26, 25.4, 23.4, 20.2, 17.3],
  }),
  h_z: {
    label: "Lift, to the outlet",
    symbol: "h_w",
    kind: "head",
    start: 1.5,
    limits: [-1000, 1000],
    typical: [-10, 30],
    help: "Height of the outlet above the water that the pump draws; below zero where it falls. A closed loop has none.",
    when: withPump,
  } as Field,
  h_w: {
    label: "Water above the outlet",
    symbol: "h_w",
    kind: "head",
    start: 12,
    limits: [0.001, 2000],
    typical: [0.5, 80],
    help: "Its height. Of a main, the pressure as a head of water.",
    when: { source: ["head", "tank"] },
  } as Field,
  A_t: {
    label: "Area of the tank",
    symbol: "A_t",
    kind: "area",
    start: 1.2,
    limits: [1e-6, 1e5],
    typical: [0.05, 100],
    help: "Seen from above.",
    when: withTank,
  } as Field,
  h_to: {
    label: "Height left at the end",
    symbol: "h_w",
    kind: "head",
    start: 10.5,
    limits: [0.01, 2000],
    typical: [0.1, 80],
    help: "Above the outlet too.",
    when: withTank,
  } as Field,
};

/** One pipe and one core, as water sees them. */
export const lineInputs = {
  L: { ...pipeInputs.L, start: 18, help: "There and back.", heading: "Pipe and core" },
  d: { ...pipeInputs.d, start: 0.042 },
  k_s: pipeInputs.k_s,
  K: { ...pipeInputs.K, start: 7, help: "The sum over bends, tees, strainer, inlet and outlet." },
  Delta_p_ref: {
    label: "Known loss of the core",
    symbol: "Delta_p_ref",
    kind: "pressureDifference",
    start: 22_000,
    limits: [0, 1e7],
    typical: [500, 100_000],
    help: "On the water side.",
  },
  V_ref: {
    label: "At this water flow",
    symbol: "V_ref",
    kind: "liquidFlow",
    start: 8 / 3600,
    limits: [1e-9, 10],
    typical: [2e-5, 0.1],
    help: "",
  },
  n_p: {
    label: "Exponent of that loss",
    symbol: "n_p",
    kind: "ratio",
    start: 1.9,
    limits: [0.8, 2.2],
    typical: [1.7, 2],
    help: "Over the flow. Common practice: 1.75 to 2 for turbulent water, 1 for laminar.",
  },
} as const satisfies Record<string, Field>;

/** Pump or height, pipe, core and valve, in balance. */
export const circuitRelations: readonly AnyRelation[] = [
  pumpHead,
  pressureOfHead,
  ...pipeRelations,
  lossAtFlow,
  restLoss,
  leftForValve,
  criticalRatioFactor,
  chokedDifference,
  valveFlow,
  authority,
  hydraulicPower,
];
