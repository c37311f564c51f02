import { type InstalledGiven, installed, TRAVEL } from "../../calc/circuit/valve/installed.ts";
import { installedFlow } from "../../calc/circuit/valve/installed-flow.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { atFirstLine, pointsFrom } from "./parts/points.ts";
import {
  characteristicInputs,
  characteristicRelations,
  positionFields,
  withoutTable,
  withTable,
} from "./parts/valve.ts";

const ofFlow = { wanted: ["flow"] } as const;
const ofPosition = { wanted: ["position"] } as const;

/** Both charts sweep the position. */
const overPositions = {
  draw: "chart",
  holding: { wanted: "flow" },
  y: "q_v_found",
  curves: [{ label: "in this circuit" }, { label: "the valve alone", dash: "alternative", y: "phi_v" }],
  title:
    "Flow against the position: in the circuit, and at one pressure difference, as valves are sold. The ring is the state above.",
} as const;

export default defineCalculator({
  id: "installed-valve",
  title: "Valve in its circuit",
  group: "Water",
  asks: "How much of the full flow passes at a position of the valve, and how finely does it steer there?",
  inputs: {
    wanted: {
      label: "What is wanted",
      options: { flow: "the flow at a position", position: "the position for a flow" },
      start: "flow",
      help: "",
      heading: "Valve",
    },
    x_v: { ...positionFields.x_v, when: { ...ofFlow, ...withoutTable } },
    y_v: { ...positionFields.y_v, when: { ...ofFlow, ...withTable } },
    q_v: {
      label: "Part of the full flow that is wanted",
      symbol: "q_v",
      kind: "fraction",
      start: 0.4,
      limits: [0.0001, 1],
      typical: [0.02, 1],
      help: "Of the flow with the valve fully open.",
      when: ofPosition,
    },
    N_v: {
      label: "Authority",
      symbol: "N_v",
      kind: "fraction",
      start: 0.35,
      limits: [0.0001, 1],
      typical: [0.02, 1],
      help: "Pressure across the open valve, over all that is lost at that flow. Water circuit computes it. Common practice: 0.3 to 0.5.",
    },
    ...characteristicInputs,
  },
  results: {
    y_v_found: {
      label: "Position, as in the table",
      symbol: "y_v",
      kind: "ratio",
      when: { ...ofPosition, ...withTable },
    },
    x_v_found: { label: "Position, part of the travel", symbol: "x_v", kind: "fraction", when: ofPosition },
    q_v_found: { label: "Part of the full flow", symbol: "q_v", kind: "fraction" },
    phi_v: { label: "Part of the full flow coefficient", symbol: "phi_v", kind: "fraction" },
    g_v: { label: "Gain: change of flow over travel", symbol: "g_v", kind: "ratio" },
    x_from: { label: "Least usual position", symbol: "x_v", kind: "fraction", inPicture: true },
    x_to: { label: "Most usual position", symbol: "x_v", kind: "fraction", inPicture: true },
    y_from: { label: "Least usual position, as in the table", symbol: "y_v", kind: "ratio", inPicture: true },
    y_to: { label: "Most usual position, as in the table", symbol: "y_v", kind: "ratio", inPicture: true },
  },
  relations: [...characteristicRelations, installedFlow],
  model: (given, trace) => {
    const table = pointsFrom(given, "y", "u");
    const found = atFirstLine({ table: "u_1" }, () =>
      installed({ ...given, table } as unknown as InstalledGiven, trace),
    );
    const { x_v, y_v, q_v, phi_v, gain, usual } = found;
    return {
      y_v_found: y_v,
      x_v_found: x_v,
      q_v_found: q_v,
      phi_v,
      g_v: gain,
      x_from: TRAVEL.least,
      x_to: TRAVEL.most,
      y_from: usual[0],
      y_to: usual[1],
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      ...overPositions,
      when: withTable,
      vary: "y_v",
      span: [0, 360],
      x: "y_v_found",
      bands: [{ from: "y_from", to: "y_to", label: "usual" }],
    },
    {
      ...overPositions,
      vary: "x_v",
      span: [0, 1],
      x: "x_v_found",
      bands: [{ from: "x_from", to: "x_to", label: "usual" }],
    },
  ],
});
