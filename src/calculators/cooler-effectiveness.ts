import { coolerFromReadings } from "../../calc/exchanger/cooler-from-readings.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import {
  arrangementFrom,
  arrangementInputs,
  boilingResult,
  coolantInputs,
  coolerResults,
  waterFlowInputs,
} from "./parts/exchanger.ts";
import { boilingRelations, readingRelations } from "./parts/exchanger-relations.ts";

const airMeasured = { flows: ["both", "air"] } as const;
const waterMeasured = { flows: ["both", "water"] } as const;
/** The answer here, and the others that follow it. */
const { P, ...otherResults } = coolerResults;
const { heading: charge, ...airFlow } = chargeInputs.m_a;

export default defineCalculator({
  id: "cooler-effectiveness",
  title: "Effectiveness from readings",
  group: "Cooling",
  asks: "How effective is the cooler, do both sides agree, and how large is it really?",
  inputs: {
    T_2: { ...chargeInputs.T_2, heading: charge },
    T_3: {
      label: "Air temperature after the cooler",
      symbol: "T_3",
      kind: "temperature",
      start: 331.95,
      limits: [223.15, 773.15],
      help: "The mean of the whole outlet: it leaves in stripes.",
    },
    moisture: chargeInputs.moisture,
    w: chargeInputs.w,
    p_2: chargeInputs.p_2,
    ...coolantInputs,
    T_w_out: {
      label: "Water temperature at the outlet",
      symbol: "T_w_out",
      kind: "temperature",
      start: 307.15,
      limits: [223.15, 463.15],
      typical: [276.15, 373.15],
      help: "",
    },
    flows: {
      label: "Flows that were measured",
      options: { both: "air and water", air: "air only", water: "water only" },
      start: "both",
      help: "",
      heading: "Flows",
    },
    m_a: { ...airFlow, when: airMeasured },
    flow: { ...waterFlowInputs.flow, when: waterMeasured },
    m_w: waterFlowInputs.m_w,
    V_w: waterFlowInputs.V_w,
    rho_w: waterFlowInputs.rho_w,
    ...arrangementInputs,
  },
  results: {
    P,
    Q_a: { label: "Heat given off by the air", symbol: "Q_a", kind: "heatFlow" },
    Q_w: { label: "Heat taken up by the water", symbol: "Q_w", kind: "heatFlow", when: { flows: ["both"] } },
    delta_Q: {
      label: "Heat balance: water over air, less one",
      symbol: "delta_Q",
      kind: "fraction",
      when: { flows: ["both"] },
    },
    m_w_found: { label: "Water flow that fits", symbol: "m_w", kind: "massFlow", when: { flows: ["air"] } },
    m_a_found: { label: "Air flow that fits", symbol: "m_a", kind: "massFlow", when: { flows: ["water"] } },
    UA: { label: "Heat conductance", symbol: "UA", kind: "conductance" },
    ...otherResults,
    Delta_T_sat: boilingResult,
  },
  relations: [...readingRelations, ...boilingRelations],
  model: (given, trace) => {
    const arrangement = arrangementFrom(given);
    const found = coolerFromReadings(
      { ...given, arrangement } as unknown as Parameters<typeof coolerFromReadings>[0],
      trace,
    );
    return { ...found, m_a_found: found.m_a, m_w_found: found.m_w } as unknown as ReturnType<
      Calculator["model"]
    >;
  },
  pictures: [
    {
      draw: "chart",
      vary: "T_3",
      span: [300.15, 373.15],
      x: "T_3",
      y: "P",
      curves: [{ label: "these readings" }, { label: "highest at any size", dash: "ideal", y: "P_most" }],
      title:
        "Effectiveness against the air temperature after the cooler: what a wrong probe would make of it.",
    },
  ],
});
