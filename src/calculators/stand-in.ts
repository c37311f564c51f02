import { lossToAdd } from "../../calc/circuit/orifice/loss-to-add.ts";
import { ledBackFlow } from "../../calc/exchanger/led-back-flow.ts";
import { mixedInFlow } from "../../calc/exchanger/mixed-in-flow.ts";
import { outletForDensityRatio } from "../../calc/exchanger/outlet-for-density-ratio.ts";
import { standIn } from "../../calc/exchanger/stand-in.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { gasConstant } from "../../calc/fluids/gas-constant.ts";
import { temperatureAtDensity } from "../../calc/fluids/temperature-at-density.ts";
import { volumeFlow } from "../../calc/fluids/volume-flow.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { arrangementInputs, coolerResults, waterFlowInputs } from "./parts/exchanger.ts";
import { movingCoolantInputs, movingInputs, movingResults } from "./parts/moving.ts";
import { rightWayMovingRelations } from "./parts/moving-relations.ts";
import { convertedTargets, targetInputs } from "./parts/target.ts";

const throttled = { way: ["throttle"] } as const;
const tempered = { way: ["temper"] } as const;
const asItIs = { way: ["now"] } as const;

const flowLimit = {
  ...waterFlowInputs.m_w,
  when: throttled,
} as const;

const between = "between laminar and turbulent";

const outlets = {
  draw: "chart",
  holding: { way: "now" },
  y: "T_3_found",
  curves: [{ label: "this cooler" }, { label: "wanted", dash: "ideal", y: "T_target" }],
  title: "Air after the cooler against the water. Where the lines meet it stands in for the other one.",
} as const;

const overFlow = {
  vary: "m_w",
  bands: [{ from: "m_lam", to: "m_turb", label: between }],
  span: [0.05, 3.4],
} as const;

const flowBounds = [
  { at: "m_boil", label: "wall boils", wrong: "below" },
  { at: "m_silt", label: "silt", wrong: "below" },
] as const;

const overInlet = {
  when: tempered,
  vary: "T_w_in",
  span: [280.15, 333.15],
  x: "T_w_in_found",
  bands: [{ from: "T_lam", to: "T_turb", label: between }],
  bounds: [
    { at: "T_supply", label: "supply", wrong: "below" },
    { at: "T_boil", label: "wall boils", wrong: "above" },
  ],
} as const;

const walls = {
  draw: "chart",
  holding: { way: "now" },
  y: "T_wall",
  curves: [
    { label: "hot wall, at most" },
    { label: "water outlet", dash: "alternative", y: "T_w_out" },
    { label: "water boils", dash: "ideal", y: "T_sat" },
  ],
  title: "The hottest wall and the water outlet, against the same.",
} as const;

const limited = {
  ...overFlow,
  when: throttled,
  x: "m_w_found",
  bounds: [
    ...flowBounds,
    { at: "m_least", label: "least", wrong: "below" },
    { at: "m_most", label: "most", wrong: "above" },
  ],
} as const;

const free = { ...overFlow, x: "m_w", bounds: flowBounds } as const;

export default defineCalculator({
  id: "stand-in",
  title: "Stand in for another cooler",
  group: "Matching",
  asks: "Which water makes this cooler do what another one does?",
  inputs: {
    ...targetInputs,
    m_a: { ...chargeInputs.m_a, start: 0.395 },
    T_2: chargeInputs.T_2,
    core: {
      ...arrangementInputs.core,
      label: "Arrangement, hoses the right way",
      heading: "Cooler on the rig",
    },
    ...movingInputs,
    ...movingCoolantInputs,
    way: {
      label: "What is done to the water",
      options: {
        throttle: "throttle it",
        temper: "temper it, its flow stays",
        now: "nothing: see what it makes",
      },
      start: "throttle",
      help: "",
    },
    T_w_in: { ...movingCoolantInputs.T_w_in, when: { way: ["throttle", "now"] } },
    m_w_least: { ...flowLimit, label: "Least water flow", start: 0.1 },
    m_w_most: { ...flowLimit, label: "Most water flow", start: 3 },
    m_w: { ...waterFlowInputs.m_w, start: 2, when: { way: ["temper", "now"] } },
    T_cold: {
      label: "Cold supply",
      symbol: "T_cold",
      kind: "temperature",
      start: 288.15,
      limits: [223.15, 443.15],
      typical: [275.15, 318.15],
      help: "It is mixed with water that is led back from the outlet.",
      when: tempered,
    },
  },
  results: {
    m_w_found: { label: "Water flow", symbol: "m_w", kind: "massFlow", when: throttled },
    T_w_in_found: {
      label: "Water temperature at the inlet",
      symbol: "T_w_in",
      kind: "temperature",
      when: tempered,
    },
    T_3_found: { label: "Air after this cooler", symbol: "T_3", kind: "temperature" },
    T_target: {
      label: "Air after the other one",
      symbol: "T_3",
      kind: "temperature",
      when: convertedTargets,
    },
    V_w: { label: "Volume flow at the inlet", symbol: "V_w", kind: "liquidFlow" },
    m_fresh: {
      label: "From the cold supply",
      symbol: "m_fresh",
      kind: "massFlow",
      when: tempered,
    },
    m_back: { label: "Led back from the outlet", symbol: "m_back", kind: "massFlow", when: tempered },
    Q: { label: "Duty", symbol: "Q", kind: "heatFlow" },
    P: coolerResults.P,
    UA_here: { label: "Heat conductance at these flows", symbol: "UA", kind: "conductance" },
    Delta_p_add: {
      label: "Pressure loss to be added",
      symbol: "Delta_p_add",
      kind: "pressureDifference",
    },
    dT_3_flow: {
      label: "Outlet, with 1 % more flow",
      symbol: "Delta_T_3_m",
      kind: "temperatureDifference",
      heading: "How steady it is",
    },
    dT_3_water: { label: "Outlet, over the change of the water", symbol: "X_T_w", kind: "ratio" },
    T_at_least: {
      label: "With the least water",
      symbol: "T_3",
      kind: "temperature",
      when: throttled,
      heading: "What this cooler can make",
    },
    T_at_most: { label: "With the most water", symbol: "T_3", kind: "temperature", when: throttled },
    T_endless: { label: "With endless water", symbol: "T_3", kind: "temperature", when: throttled },
    T_at_cold: { label: "With the supply alone", symbol: "T_3", kind: "temperature", when: tempered },
    ...movingResults,
    m_lam: { label: "Flow that is just laminar", symbol: "m_w", kind: "massFlow", inPicture: true },
    m_turb: { label: "Flow that is just turbulent", symbol: "m_w", kind: "massFlow", inPicture: true },
    m_boil: { label: "Flow at which the wall boils", symbol: "m_w", kind: "massFlow", inPicture: true },
    m_silt: { label: "Flow in which silt settles", symbol: "m_w", kind: "massFlow", inPicture: true },
    m_least: { label: "Least water flow", symbol: "m_w", kind: "massFlow", inPicture: true },
    m_most: { label: "Most water flow", symbol: "m_w", kind: "massFlow", inPicture: true },
    T_lam: { label: "Inlet, just laminar", symbol: "T_w_in", kind: "temperature", inPicture: true },
    T_turb: { label: "Inlet, just turbulent", symbol: "T_w_in", kind: "temperature", inPicture: true },
    T_boil: {
      label: "Inlet at which the wall boils",
      symbol: "T_w_in",
      kind: "temperature",
      inPicture: true,
    },
    T_supply: { label: "Cold supply", symbol: "T_cold", kind: "temperature", inPicture: true },
    T_sat: { label: "Water boils", symbol: "T_sat", kind: "temperature", inPicture: true },
  },
  relations: [
    ...rightWayMovingRelations,
    ledBackFlow,
    mixedInFlow,
    lossToAdd,
    outletForDensityRatio,
    pressureAfterLoss,
    gasConstant,
    temperatureAtDensity,
    volumeFlow,
  ],
  model: (given, trace) => {
    const asked = { ...given, arrangement: given.core };
    const found = standIn(asked as unknown as Parameters<typeof standIn>[0], trace);
    const { UA, m_w, T_w_in, T_3 } = found;
    return {
      ...found,
      UA_here: UA,
      m_w_found: m_w,
      T_w_in_found: T_w_in,
      T_3_found: T_3,
      m_least: given.m_w_least,
      m_most: given.m_w_most,
      T_supply: given.T_cold,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    { ...outlets, ...limited },
    { ...outlets, ...overInlet },
    { ...outlets, ...free, when: asItIs },
  ],
  also: [
    { ...walls, ...limited },
    { ...walls, ...overInlet },
    { ...walls, ...free, when: asItIs },
  ],
});
