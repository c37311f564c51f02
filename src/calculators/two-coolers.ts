import { type CoolersOnOnePumpGiven, coolersOnOnePump } from "../../calc/circuit/coolers-on-one-pump.ts";
import { pressureOfHead } from "../../calc/circuit/pump/pressure-of-head.ts";
import { pumpHead } from "../../calc/circuit/pump/pump-head.ts";
import { restLoss } from "../../calc/circuit/pump/rest-loss.ts";
import { chokedDifference } from "../../calc/circuit/valve/choked-difference.ts";
import { criticalRatioFactor } from "../../calc/circuit/valve/critical-ratio-factor.ts";
import { valveDifference } from "../../calc/circuit/valve/valve-difference.ts";
import { lossAtFlow } from "../../calc/flow/loss-at-flow.ts";
import { type Calculator, defineCalculator, type Field } from "./engine/calculator.ts";
import { lineInputs, pumpPoints, sourceInputs, withPump } from "./parts/circuit.ts";
import { liquidInputs, liquidRelations } from "./parts/liquid.ts";
import { pipeInputs, pipeRelations } from "./parts/pipe.ts";
import { atFirstLine, pointsFrom } from "./parts/points.ts";
import { coefficientField, recoveryField, wantedFlowField } from "./parts/valve.ts";

const sideBySide = { wanted: ["flows", "settings"] } as const;
const ofFlows = { wanted: ["flows"] } as const;
const ofSettings = { wanted: ["settings"] } as const;
const ofSeries = { wanted: ["series"] } as const;
const ownPipes = { pipes: ["own"] } as const;

const hour = 3600;

const coefficient = { ...coefficientField, when: { wanted: ["flows", "series"] } } as const;

const wantedFlow = { ...wantedFlowField, when: ofSettings } as const;

const coreLoss = { ...lineInputs.Delta_p_ref, help: "On the water side, at one flow." } as const;
const coreFlow = { ...lineInputs.V_ref, label: "Flow of that loss" } as const;

const move = { symbol: "e_V", kind: "ratio" } as const;

const ownPipe = (cooler: "one" | "two", [L, d, K]: readonly [number, number, number]) =>
  ({
    L: {
      ...pipeInputs.L,
      label: `Length of pipe ${cooler}`,
      start: L,
      typical: [0, 200],
      when: ownPipes,
    },
    d: { ...pipeInputs.d, label: `Bore of pipe ${cooler}`, start: d, when: ownPipes },
    K: { ...pipeInputs.K, start: K, when: ownPipes },
  }) as const satisfies Record<string, Field>;

const pipeOne = ownPipe("one", [4, 0.0525, 3]);
const pipeTwo = ownPipe("two", [9, 0.0409, 5]);

export default defineCalculator({
  id: "two-coolers",
  title: "Two coolers on one pump",
  group: "Water",
  asks: "How do two coolers share the water of one pump, and which valve is set first?",
  inputs: {
    wanted: {
      label: "Coolers",
      options: {
        flows: "side by side, flows wanted",
        settings: "side by side, valves wanted",
        series: "one behind the other",
      },
      start: "flows",
      help: "",
      heading: "Coolers and valves",
    },
    K_v_one: {
      ...coefficient,
      label: "Flow coefficient of valve one",
      start: 8 / hour,
      help: "As it stands.",
    },
    K_v_two: { ...coefficient, label: "Flow coefficient of valve two", start: 3.5 / hour },
    V_w_one: { ...wantedFlow, label: "Flow wanted in cooler one", start: 9 / hour },
    V_w_two: { ...wantedFlow, label: "Flow wanted in cooler two", start: 4 / hour },
    Delta_p_ref_one: { ...coreLoss, label: "Loss of cooler one", start: 20_000 },
    V_ref_one: { ...coreFlow, start: 10 / hour },
    Delta_p_ref_two: { ...coreLoss, label: "Loss of cooler two", start: 15_000 },
    V_ref_two: { ...coreFlow, start: 5 / hour },
    n_p: {
      ...lineInputs.n_p,
      label: "Exponent of these losses",
      start: 1.85,
      help: "Common practice: 1.75 to 2 for turbulent water, 1 for laminar.",
    },
    F_L: { ...recoveryField, label: "Recovery factor of the valves" },
    source: {
      label: "Driven by",
      options: { pump: "a pump", head: "a tank or main of constant head" },
      start: "pump",
      help: "",
      heading: "What drives the water",
    },
    ...pumpPoints({
      start: "three",
      flows: [0, 12 / hour, 24 / hour, 18 / hour, 6 / hour],
      heads: [24, 21.6, 13.5, 18.2, 23.5],
    }),
    h_z: {
      ...sourceInputs.h_z,
      label: "Outlet above the water",
      start: 1,
      help: "That the pump draws. Below zero where the water falls. A closed loop has none.",
    },
    h_w: {
      ...sourceInputs.h_w,
      start: 20,
      help: "Of a main, its pressure as a head of water.",
      when: { source: ["head"] },
    },
    L_shared: {
      ...pipeInputs.L,
      label: "Length of shared pipe",
      start: 20,
      typical: [0, 200],
      heading: "Pipes",
    },
    d_shared: { ...pipeInputs.d, label: "Bore of shared pipe" },
    K_shared: { ...pipeInputs.K, start: 6 },
    pipes: {
      label: "Besides it",
      options: { shared: "hardly any pipe", own: "each cooler has a pipe of its own" },
      start: "shared",
      help: "",
    },
    L_one: pipeOne.L,
    d_one: pipeOne.d,
    K_one: pipeOne.K,
    L_two: pipeTwo.L,
    d_two: pipeTwo.d,
    K_two: pipeTwo.K,
    k_s: { ...pipeInputs.k_s, label: "Roughness of the pipes" },
    ...liquidInputs,
    liquid: { ...liquidInputs.liquid, heading: "Water" },
    T_w: { ...liquidInputs.T_w, start: 303.15, help: "At the valves." },
    p_out: {
      label: "Pressure behind the last valve",
      symbol: "p_out",
      kind: "pressure",
      start: 104_000,
      limits: [1000, 1e7],
      typical: [90_000, 500_000],
      help: "It decides when a valve chokes. An open drain has the barometer.",
    },
  },
  results: {
    V_w_one_found: { label: "Flow of cooler one", symbol: "V_w", kind: "liquidFlow", when: ofFlows },
    V_w_two_found: { label: "Flow of cooler two", symbol: "V_w", kind: "liquidFlow", when: ofFlows },
    K_v_one_found: {
      label: "Needed for valve one",
      symbol: "K_v",
      kind: "flowCoefficient",
      when: ofSettings,
    },
    K_v_two_found: {
      label: "Needed for valve two",
      symbol: "K_v",
      kind: "flowCoefficient",
      when: ofSettings,
    },
    V_w_both: { label: "Flow of both together", symbol: "V_w", kind: "liquidFlow", when: sideBySide },
    V_w_line: { label: "Flow through both", symbol: "V_w", kind: "liquidFlow", when: ofSeries },
    V_most_one: {
      label: "Most for cooler one beside that of two",
      symbol: "V_w",
      kind: "liquidFlow",
      when: ofSettings,
    },
    V_most_two: {
      label: "Most for cooler two beside that of one",
      symbol: "V_w",
      kind: "liquidFlow",
      when: ofSettings,
    },
    Delta_p_P: {
      label: "Pressure given",
      symbol: "Delta_p_P",
      kind: "pressureDifference",
      heading: "Where the pressure goes",
    },
    Delta_p_z: { label: "Lift", symbol: "Delta_p_z", kind: "pressureDifference", when: withPump },
    Delta_p_shared: { label: "Pipe that both share", symbol: "Delta_p", kind: "pressureDifference" },
    Delta_p_branches: {
      label: "Left for coolers and valves",
      symbol: "Delta_p",
      kind: "pressureDifference",
    },
    Delta_p_v_one: { label: "Across valve one", symbol: "Delta_p_v", kind: "pressureDifference" },
    Delta_p_v_two: { label: "Across valve two", symbol: "Delta_p_v", kind: "pressureDifference" },
    e_11: { ...move, label: "Flow one, by valve one", heading: "How much a valve moves a flow" },
    e_21: { ...move, label: "Flow two, by valve one", when: sideBySide },
    e_12: { ...move, label: "Flow one, by valve two", when: sideBySide },
    e_22: { ...move, label: "Flow two, by valve two" },
    x_left: {
      label: "Part of a miss that a round leaves",
      symbol: "x_left",
      kind: "fraction",
      when: sideBySide,
    },
  },
  relations: [
    ...liquidRelations,
    ...pipeRelations,
    pumpHead,
    pressureOfHead,
    lossAtFlow,
    restLoss,
    valveDifference,
    criticalRatioFactor,
    chokedDifference,
  ],
  model: (given, trace) => {
    const known = { ...given, points: pointsFrom(given, "V_P", "h_P") } as unknown as CoolersOnOnePumpGiven;
    const found = atFirstLine({ points: "h_P_1" }, () => coolersOnOnePump(known, trace));
    const { one, two, V_w, V_most, moves, left, Delta_p_P, Delta_p_z, Delta_p_shared, Delta_p_branches } =
      found;
    const [[e_11, e_12], [e_21, e_22]] = moves;
    return {
      V_w_one_found: one.V_w,
      V_w_two_found: two.V_w,
      K_v_one_found: one.K_v,
      K_v_two_found: two.K_v,
      V_w_both: V_w,
      V_w_line: V_w,
      V_most_one: V_most?.[0],
      V_most_two: V_most?.[1],
      Delta_p_P,
      Delta_p_z,
      Delta_p_shared,
      Delta_p_branches,
      Delta_p_v_one: one.Delta_p_v,
      Delta_p_v_two: two.Delta_p_v,
      e_11,
      e_12,
      e_21,
      e_22,
      x_left: left,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: ofFlows,
      vary: "K_v_one",
      span: [0.2 / hour, 24 / hour],
      x: "K_v_one",
      y: "V_w_one_found",
      curves: [{ label: "cooler one" }, { label: "cooler two", dash: "alternative", y: "V_w_two_found" }],
      title: "Both flows over the setting of valve one, while nobody touches valve two.",
    },
    {
      draw: "chart",
      when: ofSettings,
      vary: "V_w_one",
      span: [0.5 / hour, 16 / hour],
      bounds: [{ at: "V_most_one", label: "nothing left", wrong: "above" }],
      x: "V_w_one",
      y: "K_v_one_found",
      curves: [{ label: "valve one" }, { label: "valve two", dash: "alternative", y: "K_v_two_found" }],
      title: "Both valves over the flow wanted in cooler one, with the flow of cooler two held.",
    },
    {
      draw: "chart",
      vary: "K_v_one",
      span: [0.2 / hour, 24 / hour],
      x: "K_v_one",
      y: "V_w_line",
      curves: [{ label: "" }],
      title: "Flow through both coolers over the setting of valve one.",
    },
  ],
});
