import { addedRestriction } from "../../calc/circuit/orifice/added-restriction.ts";
import { boreRatioForLoss } from "../../calc/circuit/orifice/bore-ratio-for-loss.ts";
import { lossToAdd } from "../../calc/circuit/orifice/loss-to-add.ts";
import { neededLossCoefficient } from "../../calc/circuit/orifice/needed-loss-coefficient.ts";
import { boreArea } from "../../calc/flow/bore-area.ts";
import { ductSpeed } from "../../calc/flow/duct-speed.ts";
import { fittingLoss } from "../../calc/flow/fitting-loss.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { chargeInputs } from "./parts/charge.ts";
import { airRelations } from "./parts/relations.ts";

const second = { part: ["also"] } as const;

const loss = { kind: "pressureDifference", typical: [200, 40_000] } as const;
const pressure = { kind: "pressure", limits: [10_000, 2_000_000], typical: [60_000, 600_000] } as const;
const temperature = {
  kind: "temperature",
  limits: [223.15, 773.15],
  typical: [263.15, 523.15],
  help: "",
} as const;

export default defineCalculator({
  id: "added-restriction",
  title: "Plate to match a pressure loss",
  group: "Matching",
  asks: "The rig loses less pressure than the cooler that it stands for. What plate adds the rest?",
  inputs: {
    Delta_p_tgt: {
      ...loss,
      label: "Loss of the target",
      symbol: "Delta_p_tgt",
      limits: [1, 200_000],
      start: 12_000,
      help: "Of the cooler that is to be matched, at the air flow and pressure below.",
      heading: "Losses at the same air flow",
    },
    Delta_p_rig: {
      ...loss,
      label: "Loss of the rig",
      symbol: "Delta_p_rig",
      limits: [0, 200_000],
      start: 5500,
      help: "Of its core and ducts, between the same two places, without the plate.",
    },
    m_a: { ...chargeInputs.m_a, heading: "Air at the plate" },
    p_in: {
      ...pressure,
      label: "Pressure before the plate",
      symbol: "p_in",
      start: 250_000,
      help: "",
    },
    T_in: {
      ...temperature,
      label: "Temperature there",
      symbol: "T_in",
      start: 330.15,
      help: "Behind the cooler it is cool, and stays so.",
    },
    d_l: {
      label: "Bore of the pipe",
      symbol: "d_l",
      kind: "length",
      start: 0.08,
      limits: [0.005, 2],
      typical: [0.03, 0.3],
      help: "Where the plate sits between flanges.",
    },
    part: {
      label: "A second flow",
      options: { none: "leave it out", also: "say what the plate takes there" },
      start: "none",
      help: "",
    },
    m_part: {
      ...chargeInputs.m_a,
      heading: "Second flow",
      label: "Air flow there",
      symbol: "m_a",
      start: 0.15,
      when: second,
    },
    p_part: {
      ...pressure,
      label: "Pressure before it",
      symbol: "p_in",
      start: 150_000,
      help: "",
      when: second,
    },
    T_part: {
      ...temperature,
      label: "Temperature there",
      symbol: "T_in",
      start: 315.15,
      when: second,
    },
  },
  results: {
    d: { label: "Bore of the plate", symbol: "d", kind: "length" },
    Delta_p_add: { label: "Loss that it adds", symbol: "Delta_p_add", kind: "pressureDifference" },
    K: { label: "Loss coefficient, in the pipe", symbol: "K", kind: "ratio" },
    beta_d: { label: "Bore of the plate over that of the pipe", symbol: "beta_d", kind: "ratio" },
    rho: { label: "Density before the plate", symbol: "rho", kind: "density" },
    c: { label: "Speed in the pipe", symbol: "c", kind: "speed" },
    Delta_p_part: {
      label: "What it takes at the second flow",
      symbol: "Delta_p",
      kind: "pressureDifference",
      when: second,
    },
    Delta_p_own: {
      label: "Loss of the rig",
      symbol: "Delta_p_rig",
      kind: "pressureDifference",
      inPicture: true,
    },
  },
  relations: [
    ...airRelations,
    lossToAdd,
    boreArea,
    ductSpeed,
    neededLossCoefficient,
    boreRatioForLoss,
    fittingLoss,
  ],
  model: (given, trace) => {
    const found = addedRestriction(given as unknown as Parameters<typeof addedRestriction>[0], trace);
    return { ...found, Delta_p_own: given.Delta_p_rig } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "Delta_p_tgt",
      span: [1000, 25_000],
      bounds: [{ at: "Delta_p_own", label: "the rig’s own loss", wrong: "below" }],
      x: "Delta_p_tgt",
      y: "d",
      curves: [{ label: "" }],
      title:
        "Bore of the plate against the loss of the target. What lies right of the line is what the plate adds.",
    },
  ],
  also: [
    {
      draw: "chart",
      when: second,
      vary: "m_part",
      span: [0.02, 0.4],
      x: "m_part",
      y: "Delta_p_part",
      curves: [{ label: "" }],
      title: "What this plate takes against the air flow, at the second pressure and temperature.",
    },
  ],
});
