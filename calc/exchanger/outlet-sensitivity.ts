import type { SI } from "../quantity/domain-error.ts";
import { type MovingCooler, settleMoving, type WaterInlet } from "./moving-cooler.ts";
import type { Outlets } from "./outlets.ts";

/**
 * `dT_3_flow` is by how much the outlet moves with a hundredth more water, K; `dT_3_water` with water that enters a kelvin warmer,
 * K/K.
 */
export interface OutletSensitivity {
  readonly dT_3_flow: SI;
  readonly dT_3_water: SI;
}

/** Steps in which the outlet is looked at beside a state: of the logarithm of the flow, and of the inlet in K. */
const STEP = 1e-3;
const KELVIN = 0.05;

/** How steadily a settled state holds its air outlet, by differences on both sides of it. */
export function outletSensitivity(
  cooler: MovingCooler,
  { m_w, T_w_in }: WaterInlet,
  state: Pick<Outlets, "T_3" | "T_w_out">,
): OutletSensitivity {
  const outlet = (m: SI, T: SI) => settleMoving(cooler, { m_w: m, T_w_in: T }, state).T_3;
  const perLogarithm =
    (outlet(m_w * Math.exp(STEP), T_w_in) - outlet(m_w * Math.exp(-STEP), T_w_in)) / (2 * STEP);
  const perKelvin = (outlet(m_w, T_w_in + KELVIN) - outlet(m_w, T_w_in - KELVIN)) / (2 * KELVIN);
  return { dT_3_flow: perLogarithm / 100, dT_3_water: perKelvin };
}
