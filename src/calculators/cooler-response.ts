import { capacityRate } from "../../calc/exchanger/capacity-rate.ts";
import { airBehindCore } from "../../calc/exchanger/response/air-behind-core.ts";
import { coolerResponse } from "../../calc/exchanger/response/cooler-response.ts";
import { coreAfterStep } from "../../calc/exchanger/response/core-after-step.ts";
import { coreAtRest } from "../../calc/exchanger/response/core-at-rest.ts";
import { coreMass } from "../../calc/exchanger/response/core-mass.ts";
import { fillTime } from "../../calc/exchanger/response/fill-time.ts";
import { timeConstant } from "../../calc/exchanger/response/time-constant.ts";
import { volumeForFillTime } from "../../calc/exchanger/response/volume-for-fill-time.ts";
import { wallExchange } from "../../calc/exchanger/response/wall-exchange.ts";
import { density } from "../../calc/fluids/density.ts";
import { gasConstant } from "../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../calc/fluids/heat-capacity.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { coreFields } from "./parts/response.ts";

const target = coreFields({
  heading: "Cooler that it stands in for",
  M_core: 9.5,
  UA_a: 900,
  UA_film: 1500,
  C_w: 2000,
  T_w_in: 303.15,
  V_ch: 0.022,
});
const cell = coreFields({
  heading: "Cooler in the cell",
  M_core: 6,
  UA_a: 1220,
  UA_film: 1310,
  C_w: 3760,
  T_w_in: 310.65,
  V_ch: 0.009,
});

export default defineCalculator({
  id: "cooler-response",
  title: "How fast a cooler answers",
  group: "Matching",
  asks: "Does the cell's cooler answer as fast as the one that it stands in for?",
  inputs: {
    m_a: chargeInputs.m_a,
    T_2_from: {
      label: "Air before the step",
      symbol: "T_2",
      kind: "temperature",
      start: 323.15,
      limits: [223.15, 773.15],
      typical: [263.15, 523.15],
      help: "It has lasted long enough for the cooler to be at rest.",
    },
    T_2: { ...chargeInputs.T_2, label: "Air after the step" },
    p_2: { ...chargeInputs.p_2, help: "For the mass that the pipes hold.", when: {} },
    t: {
      label: "Time after the step",
      symbol: "t",
      kind: "duration",
      start: 5,
      limits: [0, 100_000],
      typical: [0, 600],
      help: "",
    },
    x_tol: {
      label: "Counts as alike within",
      symbol: "x_tol",
      kind: "fraction",
      start: 0.1,
      limits: [0, 1],
      typical: [0.02, 0.3],
      help: "Part of the target's value.",
    },
    M_core: target.M_core,
    c_core: target.c_core,
    UA_a: target.UA_a,
    UA_film: target.UA_film,
    C_w: target.C_w,
    T_w_in: target.T_w_in,
    V_ch: target.V_ch,
    M_core_cell: cell.M_core,
    c_core_cell: cell.c_core,
    UA_a_cell: cell.UA_a,
    UA_film_cell: cell.UA_film,
    C_w_cell: cell.C_w,
    T_w_in_cell: cell.T_w_in,
    V_ch_cell: cell.V_ch,
  },
  results: {
    tau: { label: "Time constant, target", symbol: "tau", kind: "duration" },
    tau_cell: { label: "Time constant, cell", symbol: "tau", kind: "duration" },
    r_tau: { label: "Time constants, cell over target", symbol: "r_tau", kind: "ratio" },
    M_add: { label: "Metal that the cell's cooler lacks", symbol: "M_add", kind: "mass" },
    T_3_first: {
      label: "Air at once, target",
      symbol: "T_3",
      kind: "temperature",
      heading: "After the coolers",
    },
    T_3_first_cell: { label: "Air at once, cell", symbol: "T_3", kind: "temperature" },
    T_3_t: { label: "Air at that time, target", symbol: "T_3", kind: "temperature" },
    T_3_t_cell: { label: "Air at that time, cell", symbol: "T_3", kind: "temperature" },
    T_3_end: { label: "Air in the end, target", symbol: "T_3", kind: "temperature" },
    T_3_end_cell: { label: "Air in the end, cell", symbol: "T_3", kind: "temperature" },
    t_fill: {
      label: "Pipes fill in, target",
      symbol: "t_fill",
      kind: "duration",
      heading: "Volume of the charge",
    },
    t_fill_cell: { label: "Pipes fill in, cell", symbol: "t_fill", kind: "duration" },
    r_fill: { label: "Times to fill, cell over target", symbol: "r_fill", kind: "ratio" },
    V_add: { label: "Volume that the cell lacks", symbol: "V_add", kind: "volume" },
  },
  relations: [
    heatCapacity,
    capacityRate,
    gasConstant,
    wallExchange,
    timeConstant,
    coreAtRest,
    coreAfterStep,
    airBehindCore,
    density,
    fillTime,
    coreMass,
    volumeForFillTime,
  ],
  model: (given, trace) =>
    coolerResponse(given as unknown as Parameters<typeof coolerResponse>[0], trace) as unknown as ReturnType<
      Calculator["model"]
    >,
  pictures: [
    {
      draw: "chart",
      vary: "t",
      span: [0, 40],
      x: "t",
      y: "T_3_t",
      curves: [{ label: "target" }, { label: "cell", dash: "alternative", y: "T_3_t_cell" }],
      title: "Air after both coolers over the time after the step. The ring is the target at the time above.",
    },
  ],
});
