import { boreArea } from "../../calc/flow/bore-area.ts";
import { coolerLoss } from "../../calc/flow/cooler-loss.ts";
import { coreAcceleration } from "../../calc/flow/core-acceleration.ts";
import { coreEntranceCoefficient } from "../../calc/flow/core-entrance-coefficient.ts";
import { coreEntranceLoss } from "../../calc/flow/core-entrance-loss.ts";
import { coreExitCoefficient } from "../../calc/flow/core-exit-coefficient.ts";
import { coreExitLoss } from "../../calc/flow/core-exit-loss.ts";
import { coreFriction } from "../../calc/flow/core-friction.ts";
import { coreJetContraction } from "../../calc/flow/core-jet-contraction.ts";
import { coreLoss } from "../../calc/flow/core-loss.ts";
import { coreMeanDensity } from "../../calc/flow/core-mean-density.ts";
import { coreMeanTemperature } from "../../calc/flow/core-mean-temperature.ts";
import { corePressureLoss } from "../../calc/flow/core-pressure-loss.ts";
import { coreReynolds } from "../../calc/flow/core-reynolds.ts";
import { ductSpeed } from "../../calc/flow/duct-speed.ts";
import { fittingLoss } from "../../calc/flow/fitting-loss.ts";
import { headerShare } from "../../calc/flow/header-share.ts";
import { maskingOpenArea } from "../../calc/flow/masking-open-area.ts";
import { massFlux } from "../../calc/flow/mass-flux.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { viscosity } from "../../calc/fluids/viscosity.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { blockedShareField, lossInputs } from "./parts/core.ts";
import { inletInputs } from "./parts/inlet.ts";
import { airRelations } from "./parts/relations.ts";

const withHeaders = { headers: ["own"] } as const;

export default defineCalculator({
  id: "core-loss",
  title: "Core pressure drop",
  group: "Flow",
  asks: "How much pressure does the air lose in the core, part by part, and in its headers?",
  inputs: {
    m_a: chargeInputs.m_a,
    p_2: lossInputs.p_2,
    T_2: chargeInputs.T_2,
    T_3: lossInputs.T_3,
    w: inletInputs.w,
    A_c: {
      label: "Free-flow area",
      symbol: "A_c",
      kind: "area",
      start: 0.02074,
      limits: [1e-5, 100],
      typical: [0.001, 1],
      help: "All air passages together, where they are narrowest.",
      heading: "Core",
    },
    sigma: {
      label: "Free-flow area over the area of the face",
      symbol: "sigma",
      kind: "fraction",
      start: 0.63,
      limits: [0.02, 1],
      typical: [0.3, 0.85],
      help: "",
    },
    L: {
      label: "Flow length through the core",
      symbol: "L",
      kind: "length",
      start: 0.16,
      limits: [0.001, 10],
      typical: [0.03, 0.6],
      help: "",
    },
    D_h: {
      label: "Hydraulic diameter of a passage",
      symbol: "D_h",
      kind: "length",
      start: 0.00245,
      limits: [1e-4, 0.5],
      typical: [0.001, 0.01],
      help: "Four times its area over its wetted edge.",
    },
    f_F: {
      label: "Friction factor (Fanning)",
      symbol: "f_F",
      kind: "ratio",
      start: 0.0427,
      limits: [0, 10],
      typical: [0.004, 0.15],
      help: "At this speed in the passages. A Darcy factor is four times as large.",
    },
    surface: {
      label: "Passages",
      options: {
        interrupted: "interrupted fins: strips, louvres",
        channels: "plain flat channels, laminar",
        "tubes-laminar": "tubes, laminar",
        turbulent: "turbulent flow",
        own: "momentum factor given",
      },
      start: "interrupted",
      help: "Decides the losses at entrance and exit.",
    },
    K_d: {
      label: "Momentum factor",
      symbol: "K_d",
      kind: "ratio",
      start: 1.1,
      limits: [1, 1.6],
      typical: [1, 1.43],
      help: "1 for even speed across a passage.",
      when: { surface: ["own"] },
    },
    x_b: blockedShareField,
    headers: {
      label: "Headers",
      heading: "Headers",
      options: { none: "leave them out", own: "loss coefficients and bores" },
      start: "own",
      help: "",
    },
    K_in: {
      label: "Loss coefficient of the inlet header",
      symbol: "K_in",
      kind: "ratio",
      start: 1.2,
      limits: [0, 50],
      typical: [0.2, 3],
      help: "Common practice: a diffuser 0.3 to 1.0, a box with a 90° turn 1.0 to 1.5.",
      when: withHeaders,
    },
    d_in: {
      label: "Bore of the inlet header",
      symbol: "d_in",
      kind: "length",
      start: 0.08,
      limits: [0.002, 3],
      typical: [0.03, 0.4],
      help: "Where the coefficient counts the speed.",
      when: withHeaders,
    },
    K_out: {
      label: "Loss coefficient of the outlet header",
      symbol: "K_out",
      kind: "ratio",
      start: 0.5,
      limits: [0, 50],
      typical: [0.2, 3],
      help: "Common practice: a collector 0.4 to 0.6.",
      when: withHeaders,
    },
    d_out: {
      label: "Bore of the outlet header",
      symbol: "d_out",
      kind: "length",
      start: 0.08,
      limits: [0.002, 3],
      typical: [0.03, 0.4],
      help: "",
      when: withHeaders,
    },
  },
  results: {
    Delta_p_23: {
      label: "Pressure loss with the headers",
      symbol: "Delta_p_23",
      kind: "pressureDifference",
      when: withHeaders,
    },
    Delta_p_core: { label: "Pressure loss of the core", symbol: "Delta_p_core", kind: "pressureDifference" },
    s_hd: { label: "Share of the headers", symbol: "s_hd", kind: "fraction", when: withHeaders },
    p_3: { label: "Pressure after the cooler", symbol: "p_3", kind: "pressure" },
    G: { label: "Mass flow per free-flow area", symbol: "G", kind: "massFlux" },
    Re: { label: "Reynolds number in the passages", symbol: "Re", kind: "ratio" },
    K_c: { label: "Entrance loss coefficient", symbol: "K_c", kind: "ratio" },
    K_e: { label: "Exit loss coefficient", symbol: "K_e", kind: "ratio" },
    rho_in: { label: "Density before the core", symbol: "rho_in", kind: "density" },
    rho_out: { label: "Density behind the core", symbol: "rho_out", kind: "density" },
    Delta_p_hd_in: {
      label: "Inlet header",
      symbol: "Delta_p_hd_in",
      kind: "pressureDifference",
      when: withHeaders,
      inPicture: true,
    },
    Delta_p_ent: {
      label: "Entrance",
      symbol: "Delta_p_ent",
      kind: "pressureDifference",
      inPicture: true,
    },
    Delta_p_acc: {
      label: "Change of speed",
      symbol: "Delta_p_acc",
      kind: "pressureDifference",
      inPicture: true,
    },
    Delta_p_fr: { label: "Friction", symbol: "Delta_p_fr", kind: "pressureDifference", inPicture: true },
    Delta_p_exit: { label: "Exit", symbol: "Delta_p_exit", kind: "pressureDifference", inPicture: true },
    Delta_p_hd_out: {
      label: "Outlet header",
      symbol: "Delta_p_hd_out",
      kind: "pressureDifference",
      when: withHeaders,
      inPicture: true,
    },
  },
  relations: [
    ...airRelations,
    viscosity,
    massFlux,
    maskingOpenArea,
    coreJetContraction,
    coreEntranceCoefficient,
    coreExitCoefficient,
    coreMeanDensity,
    coreMeanTemperature,
    coreReynolds,
    coreEntranceLoss,
    coreAcceleration,
    coreFriction,
    coreExitLoss,
    corePressureLoss,
    pressureAfterLoss,
    boreArea,
    ductSpeed,
    fittingLoss,
    coolerLoss,
    headerShare,
  ],
  model: (given, trace) =>
    coreLoss(given as unknown as Parameters<typeof coreLoss>[0], trace) as unknown as ReturnType<
      Calculator["model"]
    >,
  pictures: [
    {
      draw: "shares",
      rows: [
        { label: "inlet header", y: "Delta_p_hd_in" },
        { label: "entrance", y: "Delta_p_ent" },
        { label: "change of speed", y: "Delta_p_acc" },
        { label: "friction", y: "Delta_p_fr" },
        { label: "exit", y: "Delta_p_exit" },
        { label: "outlet header", y: "Delta_p_hd_out" },
      ],
      sum: { label: "all together", y: "Delta_p_23" },
      title: "Where the pressure goes. Parts that give pressure back count to the left.",
    },
  ],
  also: [
    {
      draw: "chart",
      when: withHeaders,
      vary: "m_a",
      span: [0.05, 0.7],
      x: "m_a",
      y: "Delta_p_23",
      curves: [{ label: "with headers" }, { label: "core alone", dash: "alternative", y: "Delta_p_core" }],
      title: "Pressure loss against the air flow, with the friction factor held.",
    },
    {
      draw: "chart",
      vary: "m_a",
      span: [0.05, 0.7],
      x: "m_a",
      y: "Delta_p_core",
      curves: [{ label: "" }],
      title: "Pressure loss of the core against the air flow, with the friction factor held.",
    },
  ],
});
