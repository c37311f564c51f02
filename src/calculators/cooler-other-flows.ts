import { coolerAtFlows } from "../../calc/exchanger/cooler-at-flows.ts";
import { shareOfConductance } from "../../calc/exchanger/share-of-conductance.ts";
import { shareOfResistance } from "../../calc/exchanger/share-of-resistance.ts";
import { massFlow } from "../../calc/fluids/mass-flow.ts";
import { volumeFlow } from "../../calc/fluids/volume-flow.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { arrangementFrom, arrangementInputs, coolerResults, waterFlowInputs } from "./parts/exchanger.ts";
import { movingCoolantInputs, movingInputs, movingResults } from "./parts/moving.ts";
import { movingRelations } from "./parts/moving-relations.ts";

const byMass = { flow: ["mass"] } as const;

const ofMass = {
  draw: "chart",
  when: byMass,
  vary: "m_w",
  span: [0.1, 2.5],
  x: "m_w",
  bands: [{ from: "m_lam", to: "m_turb", label: "between laminar and turbulent" }],
  curves: [{ label: "" }],
} as const;

const ofVolume = {
  ...ofMass,
  when: {},
  vary: "V_w",
  span: [0.0001, 0.0025],
  x: "V_w",
  bands: [{ from: "V_lam", to: "V_turb", label: "between laminar and turbulent" }],
} as const;

const outlets = {
  y: "T_3",
  title: "Air after the cooler against the water flow. The ring is the state above.",
} as const;
const sizes = {
  y: "UA_here",
  title: "Heat conductance against the water flow: a cooler is smaller with less water.",
} as const;

export default defineCalculator({
  id: "cooler-other-flows",
  title: "Cooler at other flows",
  group: "Cooling",
  asks: "What does a cooler make of flows at which nobody measured it?",
  inputs: {
    ...arrangementInputs,
    ...movingInputs,
    m_a: chargeInputs.m_a,
    T_2: chargeInputs.T_2,
    ...movingCoolantInputs,
    flow: waterFlowInputs.flow,
    m_w: waterFlowInputs.m_w,
    V_w: waterFlowInputs.V_w,
  },
  results: {
    T_3: { label: "Air after the cooler", symbol: "T_3", kind: "temperature" },
    Q: { label: "Duty", symbol: "Q", kind: "heatFlow" },
    P: coolerResults.P,
    NTU: coolerResults.NTU,
    R: coolerResults.R,
    UA_here: { label: "Heat conductance at these flows", symbol: "UA", kind: "conductance" },
    share_a: { label: "Air side", symbol: "s_a", kind: "fraction", heading: "Shares of the resistance" },
    share_w: { label: "Water side", symbol: "s_w", kind: "fraction" },
    share_wall: { label: "Wall", symbol: "s_wall", kind: "fraction" },
    share_foul: { label: "Dirt", symbol: "s_foul", kind: "fraction" },
    ...movingResults,
    m_w_here: { label: "Mass flow", symbol: "m_w", kind: "massFlow" },
    V_w_here: { label: "Volume flow at the inlet", symbol: "V_w", kind: "liquidFlow" },
    m_lam: { label: "Flow that is just laminar", symbol: "m_w", kind: "massFlow", inPicture: true },
    m_turb: { label: "Flow that is just turbulent", symbol: "m_w", kind: "massFlow", inPicture: true },
    V_lam: { label: "Flow that is just laminar", symbol: "V_w", kind: "liquidFlow", inPicture: true },
    V_turb: { label: "Flow that is just turbulent", symbol: "V_w", kind: "liquidFlow", inPicture: true },
  },
  relations: [...movingRelations, shareOfConductance, shareOfResistance, massFlow, volumeFlow],
  model: (given, trace) => {
    const cooler = { ...given, arrangement: arrangementFrom(given) };
    const found = coolerAtFlows(cooler as unknown as Parameters<typeof coolerAtFlows>[0], trace);
    const { UA, m_w, V_w } = found;
    return { ...found, UA_here: UA, m_w_here: m_w, V_w_here: V_w } as unknown as ReturnType<
      Calculator["model"]
    >;
  },
  pictures: [
    { ...ofMass, ...outlets },
    { ...ofVolume, ...outlets },
  ],
  also: [
    { ...ofMass, ...sizes },
    { ...ofVolume, ...sizes },
  ],
});
