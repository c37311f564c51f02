import { type PumpAndValveGiven, pumpAndValve } from "../../calc/circuit/pump-and-valve.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { circuitRelations, lineInputs, sourceInputs } from "./parts/circuit.ts";
import { liquidInputs, liquidRelations } from "./parts/liquid.ts";
import { atFirstLine, pointsFrom } from "./parts/points.ts";
import {
  characteristicInputs,
  characteristicRelations,
  coefficientField,
  positionFields,
  recoveryField,
  wantedFlowField,
  withoutTable,
  withTable,
} from "./parts/valve.ts";

const ofFlow = { wanted: ["flow"] } as const;
const ofPosition = { wanted: ["position"] } as const;
const withPump = { source: ["pump"] } as const;
const withTank = { source: ["tank"] } as const;

/** Both charts of the position sweep it. */
const overPositions = {
  draw: "chart",
  holding: { wanted: "flow" },
  y: "V_w_found",
  curves: [{ label: "" }],
  title: "Flow in this circuit against the position of the valve. The ring is the state above.",
} as const;

export default defineCalculator({
  id: "water-circuit",
  title: "Water circuit",
  group: "Water",
  asks: "What flow do pump, pipe, cooler and valve settle at, or where must the valve stand for a flow?",
  inputs: {
    wanted: {
      label: "What is wanted",
      options: { flow: "the flow at a position", position: "the position for a flow" },
      start: "flow",
      help: "",
    },
    x_v: { ...positionFields.x_v, when: { ...ofFlow, ...withoutTable } },
    y_v: { ...positionFields.y_v, when: { ...ofFlow, ...withTable } },
    V_w: { ...wantedFlowField, start: 5 / 3600, when: ofPosition },
    ...sourceInputs,
    ...lineInputs,
    K_vs: {
      ...coefficientField,
      label: "Flow coefficient, fully open",
      symbol: "K_vs",
      start: 16 / 3600,
      help: "Of a valve with a table, that of its last line.",
      heading: "Valve at the outlet",
    },
    F_L: recoveryField,
    p_out: {
      label: "Pressure behind the valve",
      symbol: "p_out",
      kind: "pressure",
      start: 104_000,
      limits: [1000, 1e7],
      typical: [90_000, 500_000],
      help: "It decides when the valve chokes. An open drain has the barometer and the height of its pipe.",
    },
    ...characteristicInputs,
    ...liquidInputs,
    liquid: { ...liquidInputs.liquid, heading: "Water" },
    T_w: {
      ...liquidInputs.T_w,
      label: "Temperature in the pipe",
      start: 295.15,
      help: "",
    },
    T_w_out: {
      label: "Temperature at the valve",
      symbol: "T_w_out",
      kind: "temperature",
      start: 311.15,
      limits: [273.15, 473.15],
      typical: [278.15, 363.15],
      help: "The cooler has warmed it. Warm water chokes the valve sooner.",
      when: liquidInputs.T_w.when,
    },
  },
  results: {
    y_v_found: {
      label: "Position, as in the table",
      symbol: "y_v",
      kind: "ratio",
      when: { ...ofPosition, ...withTable },
    },
    x_v_found: { label: "Position, part of the travel", symbol: "x_v", kind: "fraction", when: ofPosition },
    V_w_found: { label: "Flow", symbol: "V_w", kind: "liquidFlow", when: ofFlow },
    t_d: { label: "Time until the tank is down", symbol: "t_d", kind: "duration", when: withTank },
    V_end: { label: "Flow at the end", symbol: "V_w", kind: "liquidFlow", when: withTank },
    c_w: { label: "Speed in the pipe", symbol: "c_w", kind: "speed" },
    h_P: { label: "Head of the pump", symbol: "h_P", kind: "head", when: withPump },
    W_w: { label: "Power given to the water", symbol: "W_w", kind: "power" },
    Delta_p_P: {
      label: "Pressure given",
      symbol: "Delta_p_P",
      kind: "pressureDifference",
      heading: "Where the pressure goes",
    },
    Delta_p_z: { label: "Lift", symbol: "Delta_p_z", kind: "pressureDifference", when: withPump },
    Delta_p_wall: { label: "Wall of the pipe", symbol: "Delta_p_wall", kind: "pressureDifference" },
    Delta_p_other: { label: "Fittings", symbol: "Delta_p_other", kind: "pressureDifference" },
    Delta_p_core: { label: "Core", symbol: "Delta_p_core", kind: "pressureDifference" },
    Delta_p_v: { label: "Valve", symbol: "Delta_p_v", kind: "pressureDifference" },
    Delta_p_ch: {
      label: "Difference that chokes it",
      symbol: "Delta_p_ch",
      kind: "pressureDifference",
      heading: "The valve",
    },
    K_v: { label: "Flow coefficient at this position", symbol: "K_v", kind: "flowCoefficient" },
    N_v: { label: "Authority", symbol: "N_v", kind: "fraction" },
    g_v: { label: "Gain: change of flow over travel", symbol: "g_v", kind: "ratio" },
    V_full: { label: "Flow with the valve fully open", symbol: "V_w", kind: "liquidFlow" },
    V_least: { label: "Flow just before it shuts", symbol: "V_w", kind: "liquidFlow", inPicture: true },
    Delta_p_take: {
      label: "Lift and losses without the valve",
      symbol: "Delta_p_take",
      kind: "pressureDifference",
      inPicture: true,
    },
    x_choked: { label: "Position below which it chokes", symbol: "x_v", kind: "fraction", inPicture: true },
    y_choked: { label: "The same, as in the table", symbol: "y_v", kind: "ratio", inPicture: true },
    V_laminar: {
      label: "Flow at which the pipe is laminar",
      symbol: "V_w",
      kind: "liquidFlow",
      inPicture: true,
    },
    V_turbulent: {
      label: "Flow at which it is turbulent",
      symbol: "V_w",
      kind: "liquidFlow",
      inPicture: true,
    },
  },
  relations: [...liquidRelations, ...characteristicRelations, ...circuitRelations],
  model: (given, trace) => {
    const known = {
      ...given,
      A: given.A_t,
      points: pointsFrom(given, "V_P", "h_P"),
      table: pointsFrom(given, "y", "u"),
    } as unknown as PumpAndValveGiven;
    const found = atFirstLine({ points: "h_P_1", table: "u_1", A: "A_t" }, () => pumpAndValve(known, trace));
    const { x_v, y_v, V_w, c, gain, t } = found;
    return {
      ...found,
      x_v_found: x_v,
      y_v_found: y_v,
      V_w_found: V_w,
      c_w: c,
      g_v: gain,
      t_d: t,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      ...overPositions,
      when: withTable,
      vary: "y_v",
      span: [0, 360],
      x: "y_v_found",
      bounds: [{ at: "y_choked", label: "chokes", wrong: "below" }],
    },
    {
      ...overPositions,
      vary: "x_v",
      span: [0, 1],
      x: "x_v_found",
      bounds: [{ at: "x_choked", label: "chokes", wrong: "below" }],
    },
  ],
  also: [
    {
      draw: "chart",
      vary: "V_w",
      span: [0, 0.03],
      holding: { wanted: "position" },
      x: "V_w_found",
      y: "Delta_p_P",
      curves: [
        { label: "given" },
        { label: "taken without the valve", dash: "alternative", y: "Delta_p_take" },
      ],
      bounds: [
        { at: "V_least", label: "shut", wrong: "below" },
        { at: "V_full", label: "fully open", wrong: "above" },
      ],
      bands: [{ from: "V_laminar", to: "V_turbulent", label: "transition in the pipe" }],
      title:
        "Pressure given, and taken by all but the valve, against the flow. The valve takes what lies between.",
    },
  ],
});
