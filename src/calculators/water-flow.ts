import { waterForDuty } from "../../calc/exchanger/water-for-duty.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { boilingResult, coolantInputs, waterFlowInputs } from "./parts/exchanger.ts";
import { boilingRelations, waterFlowRelations } from "./parts/exchanger-relations.ts";

const fromAir = { duty: ["air"] } as const;
const byRise = { bound: ["rise"] } as const;
const byOutlet = { bound: ["outlet"] } as const;

export default defineCalculator({
  id: "water-flow",
  title: "Water flow",
  group: "Cooling",
  asks: "How much water takes up a duty with the rise that is allowed?",
  inputs: {
    duty: {
      label: "Duty",
      options: { stated: "known", air: "from the air to be cooled" },
      start: "stated",
      help: "",
    },
    Q: {
      label: "Duty of the cooler",
      symbol: "Q",
      kind: "heatFlow",
      start: 45_000,
      limits: [1, 1e8],
      typical: [1000, 3e6],
      help: "",
      when: { duty: ["stated"] },
    },
    m_a: { ...chargeInputs.m_a, when: fromAir },
    T_2: { ...chargeInputs.T_2, when: fromAir },
    T_3: {
      label: "Air temperature after the cooler",
      symbol: "T_3",
      kind: "temperature",
      start: 332.15,
      limits: [223.15, 773.15],
      help: "",
      when: fromAir,
    },
    moisture: { ...chargeInputs.moisture, when: fromAir },
    w: chargeInputs.w,
    p_2: chargeInputs.p_2,
    ...coolantInputs,
    rho_w: { ...waterFlowInputs.rho_w, when: { coolant: ["stated"] } },
    bound: {
      label: "How far the water may warm",
      options: { rise: "by a rise", outlet: "to an outlet temperature" },
      start: "rise",
      help: "",
    },
    Delta_T_w: {
      label: "Rise of the water temperature",
      symbol: "Delta_T_w",
      kind: "temperatureDifference",
      start: 10,
      limits: [0.1, 150],
      typical: [3, 20],
      help: "Below 3 K there is little to measure.",
      when: byRise,
    },
    T_w_out: {
      label: "Water temperature at the outlet",
      symbol: "T_w_out",
      kind: "temperature",
      start: 305.15,
      limits: [223.15, 463.15],
      typical: [280.15, 323.15],
      help: "Towers and drains have their own limits.",
      when: byOutlet,
    },
  },
  results: {
    m_w: { label: "Water flow", symbol: "m_w", kind: "massFlow" },
    V_w: { label: "Volume flow at the inlet", symbol: "V_w", kind: "liquidFlow" },
    T_w_end: { label: "Water outlet", symbol: "T_w_out", kind: "temperature", when: byRise },
    rise: { label: "Rise of the water", symbol: "Delta_T_w", kind: "temperatureDifference", when: byOutlet },
    duty_found: { label: "Duty", symbol: "Q", kind: "heatFlow", when: fromAir },
    Delta_T_sat: boilingResult,
  },
  relations: [...waterFlowRelations, ...boilingRelations],
  model: (given, trace) => {
    const found = waterForDuty(given as unknown as Parameters<typeof waterForDuty>[0], trace);
    return {
      ...found,
      T_w_end: found.T_w_out,
      rise: found.Delta_T_w,
      duty_found: found.Q,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: byRise,
      vary: "Delta_T_w",
      span: [2, 30],
      x: "Delta_T_w",
      y: "m_w",
      curves: [{ label: "" }],
      title: "Water flow against the rise of its temperature: half the rise takes twice the water.",
    },
    {
      draw: "chart",
      vary: "T_w_out",
      span: [298.15, 323.15],
      x: "T_w_out",
      y: "m_w",
      curves: [{ label: "" }],
      title: "Water flow against the temperature at which it may leave.",
    },
  ],
});
