import { dischargeCoefficient } from "../../calc/circuit/orifice/discharge-coefficient.ts";
import { downstreamTap } from "../../calc/circuit/orifice/downstream-tap.ts";
import { expansibility } from "../../calc/circuit/orifice/expansibility.ts";
import { flangeTap } from "../../calc/circuit/orifice/flange-tap.ts";
import { orificeFlow } from "../../calc/circuit/orifice/orifice-flow.ts";
import { plateInPipe } from "../../calc/circuit/orifice/plate-in-pipe.ts";
import { plateLoss } from "../../calc/circuit/orifice/plate-loss.ts";
import { smallPipeTerm } from "../../calc/circuit/orifice/small-pipe-term.ts";
import { velocityTerm } from "../../calc/circuit/orifice/velocity-term.ts";
import { boreArea } from "../../calc/flow/bore-area.ts";
import { diameterRatio } from "../../calc/flow/diameter-ratio.ts";
import { ductSpeed } from "../../calc/flow/duct-speed.ts";
import { fittingLoss } from "../../calc/flow/fitting-loss.ts";
import { reynoldsNumber } from "../../calc/flow/reynolds-number.ts";
import { heatCapacity } from "../../calc/fluids/heat-capacity.ts";
import { heatCapacityRatio } from "../../calc/fluids/heat-capacity-ratio.ts";
import { viscosity } from "../../calc/fluids/viscosity.ts";
import { volumeFlow } from "../../calc/fluids/volume-flow.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { liquidInputs, liquidRelations } from "./parts/liquid.ts";
import { airRelations } from "./parts/relations.ts";

const ofFlow = { wanted: ["flow"] } as const;
const ofDifference = { wanted: ["difference"] } as const;
const ofBore = { wanted: ["bore"] } as const;
const inGas = { fluid: ["gas"] } as const;
const inWater = { fluid: ["water"] } as const;
const inOther = { fluid: ["liquid"] } as const;
const inGases = { fluid: ["air", "gas"] } as const;
const inLiquids = { fluid: ["water", "liquid"] } as const;

const difference = {
  label: "Difference at the taps",
  symbol: "Delta_p",
  kind: "pressureDifference",
} as const;
const bore = { label: "Bore of the plate", symbol: "d", kind: "length" } as const;
const flow = { label: "Flow", symbol: "m", kind: "massFlow" } as const;

/** What the standard leaves out, shown where the flow lies on an axis. */
const standardBegins = { at: "m_least", label: "the standard begins", wrong: "below" } as const;
const standardEnds = { at: "Delta_p_end", label: "the standard ends", wrong: "above" } as const;

export default defineCalculator({
  id: "orifice-plate",
  title: "Orifice plate",
  group: "Flow",
  asks: "What flow does this plate read, what difference does it make, or how large must its bore be?",
  inputs: {
    wanted: {
      label: "What is wanted",
      options: {
        flow: "the flow from a difference",
        difference: "the difference from a flow",
        bore: "the bore for both",
      },
      start: "flow",
      help: "",
    },
    d_l: {
      label: "Bore of the pipe",
      symbol: "d_l",
      kind: "length",
      start: 0.1,
      limits: [0.005, 2],
      typical: [0.05, 1],
      help: "",
      heading: "Plate",
    },
    d: {
      ...bore,
      start: 0.06,
      limits: [0.0005, 1.9],
      typical: [0.0125, 0.5],
      help: "",
      when: { wanted: ["flow", "difference"] },
    },
    taps: {
      label: "Taps",
      options: {
        corner: "in the corners of the plate",
        flange: "in the flanges, an inch from the plate",
        radius: "one bore before, half a bore behind",
      },
      start: "corner",
      help: "",
    },
    Delta_p: {
      ...difference,
      start: 5000,
      limits: [0.1, 2_000_000],
      typical: [200, 60_000],
      help: "",
      when: { wanted: ["flow", "bore"] },
    },
    m: {
      ...flow,
      start: 0.3,
      limits: [1e-6, 1000],
      typical: [0.01, 30],
      help: "",
      when: { wanted: ["difference", "bore"] },
    },
    fluid: {
      label: "Fluid",
      options: {
        air: "dry air",
        gas: "another gas, its properties are known",
        water: "fresh water",
        liquid: "another liquid, its properties are known",
      },
      start: "air",
      help: "",
      heading: "Fluid",
    },
    p_in: {
      label: "Pressure before the plate",
      symbol: "p_in",
      kind: "pressure",
      start: 250_000,
      limits: [5000, 4_000_000],
      typical: [60_000, 1_000_000],
      help: "Absolute, at the tap before it.",
      when: { fluid: ["air", "gas", "water"] },
    },
    T: {
      label: "Temperature there",
      symbol: "T",
      kind: "temperature",
      start: 330.15,
      limits: [223.15, 773.15],
      typical: [263.15, 523.15],
      help: "",
      when: { fluid: ["air"] },
    },
    rho: {
      label: "Density of the gas",
      symbol: "rho",
      kind: "density",
      start: 2.6,
      limits: [0.01, 100],
      typical: [0.3, 20],
      help: "Before the plate.",
      when: inGas,
    },
    mu: {
      label: "Viscosity of the gas",
      symbol: "mu",
      kind: "viscosity",
      start: 2e-5,
      limits: [1e-6, 1e-4],
      typical: [8e-6, 4e-5],
      help: "",
      when: inGas,
    },
    kappa: {
      label: "Heat-capacity ratio",
      symbol: "kappa",
      kind: "ratio",
      start: 1.4,
      limits: [1.01, 1.67],
      typical: [1.1, 1.67],
      help: "",
      when: inGas,
    },
    T_w: { ...liquidInputs.T_w, help: "At the plate.", when: inWater },
    rho_w: { ...liquidInputs.rho_w, when: inOther },
    mu_w: { ...liquidInputs.mu_w, limits: [1e-7, 1], when: inOther },
  },
  results: {
    m_found: { ...flow, when: ofFlow },
    Delta_p_found: { ...difference, when: ofDifference },
    d_found: { ...bore, when: ofBore },
    V_w: { label: "Volume flow", symbol: "V_w", kind: "liquidFlow", when: inLiquids },
    Delta_p_lost: { label: "Lost for good", symbol: "Delta_p", kind: "pressureDifference" },
    beta_d: { label: "Bore of the plate over that of the pipe", symbol: "beta_d", kind: "ratio" },
    C_D: { label: "Discharge coefficient", symbol: "C_D", kind: "ratio" },
    epsilon_e: { label: "Expansibility factor", symbol: "epsilon_e", kind: "ratio", when: inGases },
    Re: { label: "Reynolds number in the pipe", symbol: "Re", kind: "ratio" },
    K: { label: "Loss coefficient, in the pipe", symbol: "K", kind: "ratio" },
    rho_found: { label: "Density before the plate", symbol: "rho", kind: "density" },
    m_least: { label: "Flow where the standard begins", symbol: "m", kind: "massFlow" },
    Delta_p_end: {
      label: "Difference where the standard ends",
      symbol: "Delta_p",
      kind: "pressureDifference",
      when: inGases,
    },
  },
  relations: [
    ...airRelations,
    ...liquidRelations,
    heatCapacity,
    heatCapacityRatio,
    viscosity,
    volumeFlow,
    diameterRatio,
    boreArea,
    ductSpeed,
    reynoldsNumber,
    flangeTap,
    downstreamTap,
    velocityTerm,
    smallPipeTerm,
    dischargeCoefficient,
    expansibility,
    orificeFlow,
    plateLoss,
    fittingLoss,
  ],
  model: (given, trace) => {
    const { m, Delta_p, d, rho, ...found } = plateInPipe(
      given as unknown as Parameters<typeof plateInPipe>[0],
      trace,
    );
    return {
      ...found,
      m_found: m,
      Delta_p_found: Delta_p,
      d_found: d,
      rho_found: rho,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      when: ofFlow,
      vary: "Delta_p",
      span: [500, 80_000],
      bounds: [standardEnds],
      x: "Delta_p",
      y: "m_found",
      curves: [{ label: "" }],
      title: "Flow against the difference between the taps.",
    },
    {
      draw: "chart",
      when: { ...ofDifference, ...inLiquids },
      vary: "m",
      span: [0.1, 8],
      bounds: [standardBegins],
      x: "m",
      y: "Delta_p_found",
      curves: [{ label: "" }],
      title: "Difference between the taps against the flow of the liquid.",
    },
    {
      draw: "chart",
      when: ofDifference,
      vary: "m",
      span: [0.005, 0.8],
      bounds: [standardBegins],
      x: "m",
      y: "Delta_p_found",
      curves: [{ label: "" }],
      title: "Difference between the taps against the flow.",
    },
    {
      draw: "chart",
      vary: "Delta_p",
      span: [1000, 60_000],
      bounds: [standardEnds],
      x: "Delta_p",
      y: "d_found",
      curves: [{ label: "" }],
      title: "Bore of the plate that this flow needs, against the difference.",
    },
  ],
});
