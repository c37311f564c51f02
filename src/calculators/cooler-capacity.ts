import { airCapacity } from "../../calc/exchanger/air-capacity.ts";
import { dutyOfAll } from "../../calc/exchanger/duty-of-all.ts";
import { evenShare } from "../../calc/exchanger/even-share.ts";
import { flowOfAll } from "../../calc/exchanger/flow-of-all.ts";
import { movingFromFields } from "../../calc/exchanger/moving-from-fields.ts";
import { massFlow } from "../../calc/fluids/mass-flow.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { arrangementFrom, arrangementInputs, coolerResults, waterFlowInputs } from "./parts/exchanger.ts";
import { movingCoolantInputs, movingInputs, movingResults } from "./parts/moving.ts";
import { movingRelations } from "./parts/moving-relations.ts";

const { coolant, T_w_in, p_w, S, x_g } = movingCoolantInputs;
const { stated: _, ...liquids } = coolant.options;

const byMass = { flow: ["mass"] } as const;
const byVolume = { flow: ["volume"] } as const;
const waters = { coolant: ["water", "seawater"] } as const;

const fresh = { label: "fresh water", with: { coolant: "water" } } as const;
const salt = { label: "seawater", dash: "alternative", with: { coolant: "seawater" } } as const;
const glycol = { label: "this mixture" } as const;

const overTemperature = {
  draw: "chart",
  vary: "T_w_in",
  span: [275.15, 318.15],
  x: "T_w_in",
  y: "m_a",
  title: "Air that leaves at the wanted temperature, against the temperature of the water at the inlet.",
} as const;

const overFlow = {
  draw: "chart",
  vary: "m_w",
  span: [0.2, 3],
  x: "m_w",
  y: "m_a",
  bands: [{ from: "m_w_lam", to: "m_w_turb", label: "between laminar and turbulent" }],
  title: "Air that leaves at the wanted temperature, against the water flow.",
} as const;

const overVolume = {
  ...overFlow,
  vary: "V_w",
  span: [0.0002, 0.003],
  x: "V_w",
  bands: [{ from: "V_w_lam", to: "V_w_turb", label: "between laminar and turbulent" }],
} as const;

const laminar = { label: "Flow that is just laminar", inPicture: true } as const;
const turbulent = { label: "Flow that is just turbulent", inPicture: true } as const;

export default defineCalculator({
  id: "cooler-capacity",
  title: "Air that a cooler carries",
  group: "Cooling",
  asks: "How much air can this cooler, or several like it, bring to a wanted temperature?",
  inputs: {
    ...arrangementInputs,
    N_c: {
      label: "Coolers alike, side by side",
      symbol: "N_c",
      kind: "ratio",
      start: 1,
      limits: [1, 1000],
      typical: [1, 8],
      help: "Air and water are divided evenly. The data below are those of one.",
      whole: true,
    },
    ...movingInputs,
    T_2: { ...chargeInputs.T_2, heading: "Charge air" },
    T_3: {
      label: "Wanted air after the cooler",
      symbol: "T_3",
      kind: "temperature",
      start: 328.15,
      limits: [223.15, 773.15],
      typical: [293.15, 353.15],
      help: "",
    },
    coolant: { ...coolant, options: liquids },
    T_w_in,
    p_w: { ...p_w, when: {} },
    S,
    x_g,
    flow: waterFlowInputs.flow,
    m_w: { ...waterFlowInputs.m_w, label: "Water flow of all coolers", start: 2.4 },
    V_w: { ...waterFlowInputs.V_w, label: "Water flow of all coolers", start: 0.0024 },
  },
  results: {
    m_a: { label: "Air flow", symbol: "m_a", kind: "massFlow" },
    Q: { label: "Duty", symbol: "Q", kind: "heatFlow" },
    m_a_each: {
      label: "Air flow",
      symbol: "m_each",
      kind: "massFlow",
      heading: "Each cooler",
    },
    Q_each: { label: "Duty", symbol: "Q_each", kind: "heatFlow" },
    m_w_each: { label: "Water flow", symbol: "m_each", kind: "massFlow" },
    UA_here: { label: "Heat conductance at these flows", symbol: "UA", kind: "conductance" },
    P: coolerResults.P,
    NTU: coolerResults.NTU,
    R: coolerResults.R,
    ...movingResults,
    Delta_T_sat: { ...movingResults.Delta_T_sat, when: {} },
    Delta_T_sat_wall: { ...movingResults.Delta_T_sat_wall, when: {} },
    m_w_lam: { ...laminar, symbol: "m_w", kind: "massFlow" },
    m_w_turb: { ...turbulent, symbol: "m_w", kind: "massFlow" },
    V_w_lam: { ...laminar, symbol: "V_w", kind: "liquidFlow" },
    V_w_turb: { ...turbulent, symbol: "V_w", kind: "liquidFlow" },
  },
  relations: [...movingRelations, massFlow, evenShare, flowOfAll, dutyOfAll],
  model: (given, trace) => {
    const fields = given as unknown as Parameters<typeof movingFromFields>[0];
    const cooler = { ...given, ...movingFromFields(fields, trace), arrangement: arrangementFrom(given) };
    const found = airCapacity(cooler as unknown as Parameters<typeof airCapacity>[0], trace);
    const { UA, m_w, m_w_lam, m_w_turb } = found;
    const V_w = given["V_w"] as number | undefined;
    const asVolume = (m: number | undefined) => (V_w === undefined || !m ? undefined : (m * V_w) / m_w);
    return {
      ...found,
      UA_here: UA,
      V_w_lam: asVolume(m_w_lam),
      V_w_turb: asVolume(m_w_turb),
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    { ...overTemperature, when: waters, curves: [fresh, salt] },
    { ...overTemperature, curves: [glycol, fresh, salt] },
  ],
  also: [
    { ...overFlow, when: { ...waters, ...byMass }, curves: [fresh, salt] },
    { ...overFlow, when: byMass, curves: [glycol, fresh, salt] },
    { ...overVolume, when: { ...waters, ...byVolume }, curves: [fresh, salt] },
    { ...overVolume, curves: [glycol, fresh, salt] },
  ],
});
