import { bernoulliCoefficient } from "../../calc/circuit/valve/bernoulli-coefficient.ts";
import { cavitationIndex } from "../../calc/circuit/valve/cavitation-index.ts";
import { chokedDifference } from "../../calc/circuit/valve/choked-difference.ts";
import { coefficientAlone } from "../../calc/circuit/valve/coefficient-alone.ts";
import { combinedRecoveryFactor } from "../../calc/circuit/valve/combined-recovery-factor.ts";
import { controlValve } from "../../calc/circuit/valve/control-valve.ts";
import { criticalRatioFactor } from "../../calc/circuit/valve/critical-ratio-factor.ts";
import { effectiveCoefficient } from "../../calc/circuit/valve/effective-coefficient.ts";
import { fittingsSum } from "../../calc/circuit/valve/fittings-sum.ts";
import { inletFittingsSum } from "../../calc/circuit/valve/inlet-fittings-sum.ts";
import { pipingFactor } from "../../calc/circuit/valve/piping-factor.ts";
import { pressureRatioFactor } from "../../calc/circuit/valve/pressure-ratio-factor.ts";
import { reducerInletLoss } from "../../calc/circuit/valve/reducer-inlet-loss.ts";
import { reducerOutletLoss } from "../../calc/circuit/valve/reducer-outlet-loss.ts";
import { valveFlow } from "../../calc/circuit/valve/valve-flow.ts";
import { valveReynolds } from "../../calc/circuit/valve/valve-reynolds.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { liquidInputs, liquidRelations } from "./parts/liquid.ts";
import { coefficientField, recoveryField, wantedFlowField } from "./parts/valve.ts";

const ofFlow = { wanted: ["flow"] } as const;
const ofCoefficient = { wanted: ["coefficient"] } as const;
const withReducers = { fittings: ["reducers"] } as const;

const bore = { kind: "length", limits: [1e-4, 5], typical: [0.006, 0.3] } as const;

export default defineCalculator({
  id: "control-valve",
  title: "Control valve",
  group: "Water",
  asks: "How much water does this valve pass, or how large must it be, and does it choke?",
  inputs: {
    wanted: {
      label: "What is wanted",
      options: { flow: "the flow through a valve", coefficient: "the flow coefficient for a flow" },
      start: "flow",
      help: "",
      heading: "Valve",
    },
    K_v: {
      ...coefficientField,
      label: "Flow coefficient at this opening",
      help: "Cubic metres of cold water an hour with 1 bar across the valve. Cv is the same in US units.",
      when: ofFlow,
    },
    V_w: { ...wantedFlowField, when: ofCoefficient },
    F_L: recoveryField,
    F_d: {
      label: "Style modifier",
      symbol: "F_d",
      kind: "ratio",
      start: 0.46,
      limits: [0.01, 1.5],
      typical: [0.1, 1],
      help: "It only decides whether the flow is turbulent.",
    },
    d_v: {
      ...bore,
      label: "Bore of the valve",
      symbol: "d_v",
      start: 0.025,
      help: "",
    },
    fittings: {
      label: "Pipes at the valve",
      options: { none: "of the valve's own bore", reducers: "wider, with reducers" },
      start: "none",
      help: "",
    },
    d_in: {
      ...bore,
      label: "Bore of the pipe before it",
      symbol: "d",
      start: 0.05,
      help: "",
      when: withReducers,
    },
    d_out: {
      ...bore,
      label: "Bore of the pipe behind it",
      symbol: "d",
      start: 0.05,
      help: "",
      when: withReducers,
    },
    p_in: {
      label: "Pressure before the valve",
      symbol: "p_in",
      kind: "pressure",
      start: 350_000,
      limits: [1000, 2e7],
      typical: [110_000, 1_200_000],
      help: "Absolute, while this flow passes.",
      heading: "Water",
    },
    p_out: {
      label: "Pressure behind the valve",
      symbol: "p_out",
      kind: "pressure",
      start: 106_000,
      limits: [0, 2e7],
      typical: [90_000, 1_000_000],
      help: "An open drain has the barometer and the height of its pipe.",
    },
    ...liquidInputs,
  },
  results: {
    V_w_found: { label: "Flow", symbol: "V_w", kind: "liquidFlow", when: ofFlow },
    K_v_found: {
      label: "Flow coefficient that it needs",
      symbol: "K_v",
      kind: "flowCoefficient",
      when: ofCoefficient,
    },
    Delta_p_v: { label: "Pressure difference across it", symbol: "Delta_p_v", kind: "pressureDifference" },
    Delta_p_ch: {
      label: "Difference at which it chokes",
      symbol: "Delta_p_ch",
      kind: "pressureDifference",
    },
    x_F: { label: "Part of the way to the vapour pressure", symbol: "x_F", kind: "ratio" },
    sigma_c: { label: "Cavitation index", symbol: "sigma_c", kind: "ratio" },
    F_P: { label: "Piping geometry factor", symbol: "F_P", kind: "ratio", when: withReducers },
    Re_v: { label: "Reynolds number of the valve", symbol: "Re_v", kind: "ratio" },
    p_choked: { label: "Pressure behind it at which it chokes", symbol: "p_out", kind: "pressure" },
  },
  relations: [
    ...liquidRelations,
    criticalRatioFactor,
    reducerInletLoss,
    reducerOutletLoss,
    bernoulliCoefficient,
    inletFittingsSum,
    fittingsSum,
    pipingFactor,
    combinedRecoveryFactor,
    effectiveCoefficient,
    coefficientAlone,
    chokedDifference,
    valveFlow,
    valveReynolds,
    cavitationIndex,
    pressureRatioFactor,
  ],
  model: (given, trace) => {
    const found = controlValve(given as unknown as Parameters<typeof controlValve>[0], trace);
    const { V_w, K_v, Delta_p_v, Delta_p_ch, x_F, sigma_c, F_P, Re_v } = found;
    const p_in = given.p_in as number;
    return {
      V_w_found: V_w,
      K_v_found: K_v,
      Delta_p_v,
      Delta_p_ch,
      x_F,
      sigma_c,
      F_P,
      Re_v,
      p_choked: p_in > Delta_p_ch ? p_in - Delta_p_ch : undefined,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: ofFlow,
      vary: "p_out",
      span: [20_000, 340_000],
      bounds: [{ at: "p_choked", label: "chokes", wrong: "below" }],
      x: "p_out",
      y: "V_w_found",
      curves: [{ label: "" }],
      title: "Flow against the pressure behind the valve. Below the line a lower pressure brings no more.",
    },
    {
      draw: "chart",
      vary: "V_w",
      span: [0.0005, 0.005],
      x: "V_w",
      y: "K_v_found",
      curves: [{ label: "" }],
      title: "Flow coefficient that a flow needs between these pressures.",
    },
  ],
});
