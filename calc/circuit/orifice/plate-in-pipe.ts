import { acceptAbsolutePressure, acceptAirTemperature } from "../../fluids/accept-air.ts";
import { density } from "../../fluids/density.ts";
import { gasConstant } from "../../fluids/gas-constant.ts";
import { heatCapacity } from "../../fluids/heat-capacity.ts";
import { heatCapacityRatio } from "../../fluids/heat-capacity-ratio.ts";
import { noteRealGas } from "../../fluids/real-gas-note.ts";
import { viscosity } from "../../fluids/viscosity.ts";
import { volumeFlow } from "../../fluids/volume-flow.ts";
import { accept } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { liquidOf } from "../liquid.ts";
import { type OrificePlate, type OrificePlateGiven, orificePlate } from "./orifice-plate.ts";
import { LARGEST_OF_GAS, leastReynolds } from "./orifice-range.ts";

/**
 * A plate as `orificePlate` has it, in a fluid that is named: dry air at `T` K and `p_in` Pa absolute before the plate, another gas
 * of density `rho`, viscosity `mu` and heat-capacity ratio `kappa`, fresh water at `T_w` K, or another liquid of `rho_w` and `mu_w`.
 */
export interface PlateInPipeGiven
  extends Pick<
    OrificePlateGiven,
    "wanted" | "taps" | "d_l" | "d" | "m" | "Delta_p" | "p_in" | "rho" | "mu" | "kappa"
  > {
  readonly fluid: "air" | "gas" | "water" | "liquid";
  readonly T?: SI | undefined;
  readonly T_w?: SI | undefined;
  readonly rho_w?: SI | undefined;
  readonly mu_w?: SI | undefined;
}

/**
 * The plate, with what the fluid is: kg/m³, Pa s. `V_w` is the volume flow of a liquid, m³/s. `m_least` is the flow at which the
 * limits of the standard begin, kg/s, and `Delta_p_end` the difference at which those of a gas end, Pa.
 */
export interface PlateInPipe extends OrificePlate {
  readonly rho: SI;
  readonly mu: SI;
  readonly V_w: SI | undefined;
  readonly m_least: SI;
  readonly Delta_p_end: SI | undefined;
}

/**
 * An orifice plate by ISO 5167-2:2003 in air, water, or a fluid whose properties are known; errors and notes are those of
 * `orificePlate` and of the fluid.
 *
 * @example
 * plateInPipe({ wanted: "flow", fluid: "air", taps: "corner", d_l: 0.1, d: 0.06, p_in: 250e3, T: 330, Delta_p: 5e3 }).m // 0.29782 kg/s
 */
export const plateInPipe: Model<PlateInPipeGiven, PlateInPipe> = (given, trace = plain) => {
  const fluid = fluidOf(given, trace);
  const { wanted, taps, d_l, d, m, Delta_p } = given;
  const plate = orificePlate({ wanted, taps, d_l, d, m, Delta_p, ...fluid }, trace);
  const { rho, mu } = fluid;
  const at = { taps, d_l: d_l as SI, beta_d: plate.beta_d };
  return {
    ...plate,
    rho,
    mu,
    V_w:
      fluid.fluid === "liquid" ? trace.use(volumeFlow, { m: plate.m, rho }, "before the plate") : undefined,
    m_least: (leastReynolds(at) * Math.PI * at.d_l * mu) / 4,
    Delta_p_end: fluid.fluid === "gas" ? LARGEST_OF_GAS * fluid.p_in : undefined,
  };
};

type Fluid =
  | { readonly fluid: "gas"; readonly rho: SI; readonly mu: SI; readonly p_in: SI; readonly kappa: SI }
  | { readonly fluid: "liquid"; readonly rho: SI; readonly mu: SI; readonly p_in?: SI; readonly p_v?: SI };

function fluidOf(given: PlateInPipeGiven, trace: Trace): Fluid {
  switch (given.fluid) {
    case "air":
      return airOf(given, trace);
    case "gas":
      return gasOf(given);
    case "water": {
      const p_in = accept("p_in", "The pressure before the plate, absolute,", given.p_in, {
        kind: "pressure",
        atLeast: 1000,
        atMost: 1.6e7,
      });
      const { rho, mu, p_v } = liquidOf({ liquid: "water", T_w: given.T_w }, p_in, "p_in", trace);
      return { fluid: "liquid", rho, mu, p_in, p_v };
    }
    case "liquid": {
      // Its vapour pressure is not asked: what it would decide, whether it boils in the hole, is said on the page.
      const { rho, mu } = liquidOf({ ...given, liquid: "stated", p_v: 0 }, 1, "p_in", trace);
      return { fluid: "liquid", rho, mu };
    }
  }
}

function airOf(given: PlateInPipeGiven, trace: Trace): Fluid {
  const p_in = acceptAbsolutePressure("p_in", "The pressure before the plate, absolute,", given.p_in);
  const T = acceptAirTemperature("T", "The temperature of the air", given.T);
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const rho = trace.use(density, { p: p_in, R_m, T }, "before the plate");
  noteRealGas({ p: p_in, T }, "rho_found", trace);
  const mu = trace.use(viscosity, { T }, "air");
  const c_p = trace.use(heatCapacity, { T, w: 0 }, "air");
  return { fluid: "gas", rho, mu, p_in, kappa: trace.use(heatCapacityRatio, { c_p, R_m }, "air") };
}

function gasOf({ p_in, rho, mu, kappa }: PlateInPipeGiven): Fluid {
  return {
    fluid: "gas",
    p_in: acceptAbsolutePressure("p_in", "The pressure before the plate, absolute,", p_in),
    rho: accept("rho", "The density of the gas", rho, { kind: "density", atLeast: 1e-3, atMost: 300 }),
    mu: accept("mu", "The viscosity of the gas", mu, { kind: "viscosity", atLeast: 1e-7, atMost: 1e-3 }),
    kappa: accept("kappa", "The heat-capacity ratio", kappa, { kind: "ratio", above: 1, atMost: 1.7 }),
  };
}
