import { equalPercentageCharacteristic } from "../../../calc/circuit/valve/equal-percentage-characteristic.ts";
import { linearCharacteristic } from "../../../calc/circuit/valve/linear-characteristic.ts";
import { quickOpeningCharacteristic } from "../../../calc/circuit/valve/quick-opening-characteristic.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import type { Choice, Field } from "../engine/calculator.ts";
import { pointInputs } from "./points.ts";

export const withTable = { characteristic: ["table"] } as const;
/** The characteristics that are formulas. */
export const withoutTable = { characteristic: ["linear", "equal-percentage", "quick-opening"] } as const;

/** What a valve passes at 1 bar. */
export const coefficientField = {
  label: "Flow coefficient",
  symbol: "K_v",
  kind: "flowCoefficient",
  start: 6 / 3600,
  limits: [1e-9, 30],
  typical: [1e-5, 0.1],
  help: "",
} as const satisfies Field;

export const recoveryField = {
  label: "Recovery factor",
  symbol: "F_L",
  kind: "ratio",
  start: 0.9,
  limits: [0.2, 1],
  typical: [0.5, 0.98],
  help: "From the maker. About 0.9 for a globe valve, 0.6 for a ball: from memory.",
} as const satisfies Field;

export const wantedFlowField = {
  label: "Flow that is wanted",
  symbol: "V_w",
  kind: "liquidFlow",
  start: 9 / 3600,
  limits: [1e-9, 10],
  typical: [1e-5, 0.1],
  help: "",
} as const satisfies Field;

/** How a valve opens: by a usual characteristic, or by the user's own table in any unit. */
export const characteristicInputs = {
  characteristic: {
    label: "How it opens",
    options: {
      linear: "linear",
      "equal-percentage": "equal percentage",
      "quick-opening": "quick opening",
      table: "a table of my own",
    },
    start: "equal-percentage",
    help: "",
  } as Choice,
  R_0: {
    label: "Rangeability",
    symbol: "R_0",
    kind: "ratio",
    start: 50,
    limits: [1.01, 1000],
    typical: [20, 100],
    help: "Full flow over the least that it steers. Common practice: 30 to 50.",
    when: { characteristic: ["equal-percentage"] },
  } as Field,
  ...pointInputs({
    count: "lines",
    label: "Lines of the table",
    line: "line",
    from: "three",
    to: "six",
    start: "five",
    when: withTable,
    x: {
      id: "y",
      label: "Position",
      symbol: "y_v",
      kind: "ratio",
      limits: [0, 10_000],
      starts: [0, 2, 4, 6, 8, 10],
      help: "Turns, degrees, per cent: any unit, from shut to open.",
    },
    y: {
      id: "u",
      label: "Flow",
      symbol: "u_v",
      kind: "ratio",
      limits: [0, 1e9],
      starts: [0, 2.4, 7, 15, 21, 24],
      help: "Any unit, or the flow coefficient. With the same pressure difference in every line.",
    },
  }),
};

/** Where a valve stands: as a part of its travel, or in the unit of its table. */
export const positionFields = {
  x_v: {
    label: "Position of the valve",
    symbol: "x_v",
    kind: "fraction",
    start: 0.6,
    limits: [0, 1],
    help: "0 is shut, 1 fully open.",
  },
  y_v: {
    label: "Position, as in the table",
    symbol: "y_v",
    kind: "ratio",
    start: 4.5,
    limits: [0, 10_000],
    help: "",
  },
} as const satisfies Record<string, Field>;

export const characteristicRelations: readonly AnyRelation[] = [
  linearCharacteristic,
  equalPercentageCharacteristic,
  quickOpeningCharacteristic,
];
