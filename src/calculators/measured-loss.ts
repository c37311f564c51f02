import { coefficientRatio } from "../../calc/flow/coefficient-ratio.ts";
import { coreMeanDensity } from "../../calc/flow/core-mean-density.ts";
import { coreMeanTemperature } from "../../calc/flow/core-mean-temperature.ts";
import { lossAtDensity } from "../../calc/flow/loss-at-density.ts";
import { lossAtFlow } from "../../calc/flow/loss-at-flow.ts";
import { measuredExponent } from "../../calc/flow/measured-exponent.ts";
import { measuredLoss } from "../../calc/flow/measured-loss.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { reynoldsRatio } from "../../calc/flow/reynolds-ratio.ts";
import { viscosity } from "../../calc/fluids/viscosity.ts";
import { type Calculator, defineCalculator, type Field } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { lossExponentField, lossInputs } from "./parts/core.ts";
import { airRelations } from "./parts/relations.ts";

const two = { readings: ["two"] } as const;

const flow = { kind: "massFlow", limits: [1e-4, 500], typical: [0.01, 10], help: "" } as const;
const loss = { kind: "pressureDifference", limits: [1, 200_000], typical: [50, 30_000] } as const;
const temperature = {
  kind: "temperature",
  limits: [223.15, 773.15],
  typical: [263.15, 523.15],
  help: "",
} as const;

const first = {
  m_I: { ...flow, label: "Air flow", symbol: "m_I", start: 0.12 },
  Delta_p_I: {
    ...loss,
    label: "Pressure loss",
    symbol: "Delta_p_I",
    start: 1500,
    help: "Of total pressures. Wall taps in bores of one size do on a bench without cooling; on the engine, add the dynamic pressure before and take off the one behind.",
  },
  p_I: { ...lossInputs.p_2, symbol: "p_I", start: 102_800, help: "" },
  T_in_I: { ...temperature, label: "Air temperature before the cooler", symbol: "T_in_I", start: 293.15 },
  T_out_I: {
    ...temperature,
    label: "Air temperature after the cooler",
    symbol: "T_out_I",
    start: 293.15,
    help: "On a bench without water, the same.",
  },
} as const satisfies Record<string, Field>;

const second = {
  m_II: { ...first.m_I, label: "Air flow, second reading", symbol: "m_II", start: 0.06, when: two },
  Delta_p_II: {
    ...first.Delta_p_I,
    label: "Pressure loss, second reading",
    symbol: "Delta_p_II",
    start: 430,
    help: "",
    when: two,
  },
  p_II: {
    ...first.p_I,
    label: "Pressure before the cooler, second reading",
    symbol: "p_II",
    start: 101_700,
    when: two,
  },
  T_in_II: {
    ...first.T_in_I,
    label: "Air temperature before the cooler, second reading",
    symbol: "T_in_II",
    when: two,
  },
  T_out_II: {
    ...first.T_out_I,
    label: "Air temperature after the cooler, second reading",
    symbol: "T_out_II",
    help: "",
    when: two,
  },
} as const satisfies Record<string, Field>;

export default defineCalculator({
  id: "measured-loss",
  title: "Scale a measured drop",
  group: "Flow",
  asks: "A pressure drop was measured on a bench. What will it be at another flow, pressure and temperature?",
  inputs: {
    readings: {
      label: "Readings",
      options: { one: "one reading, and the exponent", two: "two readings at different flows" },
      start: "one",
      help: "",
      heading: "What was measured",
    },
    ...first,
    ...second,
    n_p: { ...lossExponentField, when: { readings: ["one"] } },
    rho_ref: {
      label: "Reference density",
      symbol: "rho_ref",
      kind: "density",
      start: 1.2,
      limits: [0.1, 20],
      typical: [1, 1.3],
      help: "To compare readings of different days and benches.",
    },
    m_a: { ...chargeInputs.m_a, heading: "Where the loss is wanted" },
    p_2: lossInputs.p_2,
    T_2: chargeInputs.T_2,
    T_3: lossInputs.T_3,
  },
  results: {
    Delta_p: { label: "Pressure loss at that state", symbol: "Delta_p", kind: "pressureDifference" },
    Delta_p_square: {
      label: "By the square of the flow alone",
      symbol: "Delta_p_square",
      kind: "pressureDifference",
    },
    p_3: { label: "Pressure after the cooler", symbol: "p_3", kind: "pressure" },
    n_found: { label: "Exponent of the loss over the flow", symbol: "n_p", kind: "ratio", when: two },
    rho_I: { label: "Mean density of the first reading", symbol: "rho_I", kind: "density" },
    rho_mean: { label: "Mean density at that state", symbol: "rho_mean", kind: "density" },
    Delta_p_ref: {
      label: "First reading, at the reference density",
      symbol: "Delta_p_ref",
      kind: "pressureDifference",
    },
  },
  relations: [
    ...airRelations,
    coreMeanDensity,
    coreMeanTemperature,
    viscosity,
    lossAtFlow,
    lossAtDensity,
    reynoldsRatio,
    coefficientRatio,
    measuredExponent,
    pressureAfterLoss,
  ],
  model: (given, trace) => {
    const found = measuredLoss(given as unknown as Parameters<typeof measuredLoss>[0], trace);
    return { ...found, n_found: found.n_p } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "m_a",
      span: [0.02, 0.6],
      x: "m_a",
      y: "Delta_p",
      curves: [
        { label: "with density and viscosity" },
        { label: "square of the flow alone", dash: "alternative", y: "Delta_p_square" },
      ],
      title: "Pressure loss against the air flow, at the wanted pressure and temperatures.",
    },
  ],
});
