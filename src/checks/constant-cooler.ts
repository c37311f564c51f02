import { arrangementOf } from "../../calc/exchanger/arrangements.ts";
import { capacityRate } from "../../calc/exchanger/capacity-rate.ts";
import { capacityRatio } from "../../calc/exchanger/capacity-ratio.ts";
import { coolerOutletTemperature } from "../../calc/exchanger/cooler-outlet-temperature.ts";
import { flowForOutlet } from "../../calc/exchanger/flow-for-outlet.ts";
import { acceptMoving, conductanceAt, type MovingGiven } from "../../calc/exchanger/moving-conductance.ts";
import { transferUnits } from "../../calc/exchanger/transfer-units.ts";
import { waterOutletTemperature } from "../../calc/exchanger/water-outlet-temperature.ts";
import { plain, type Trace } from "../../calc/relation/trace.ts";
import type { Value } from "./check.ts";

/** A cooler of constant heat capacities, in the names of the cases; K, kg/s, J/(kg K). */
export interface ConstantCooler {
  readonly arrangement: string;
  readonly ma: number;
  readonly cpa: number;
  readonly cpw: number;
  readonly Tai: number;
  readonly Twi: number;
  readonly mw_min: number;
  readonly mw_max: number;
  readonly T_target: number;
}

/** The flow for the target, or the side that stands against it, as the cases have it. */
export function flowOfConstantCooler(
  given: ConstantCooler,
  movingGiven: MovingGiven,
  trace: Trace,
): Readonly<Record<string, Value>> {
  const { ma, cpa, cpw, Tai: T_2, Twi: T_w_in } = given;
  const moving = acceptMoving(movingGiven, trace);
  const film = () => {
    throw new Error("no passages are known");
  };
  const at = (m_w: number, through: Trace) => {
    const C_a = through.use(capacityRate, { m: ma, c_m: cpa }, "air");
    const C_w = through.use(capacityRate, { m: m_w, c_m: cpw }, "water");
    const R = through.use(capacityRatio, { C_a, C_w }, "cooler");
    const { UA } = conductanceAt(moving, { m_a: ma, m_w }, film, through);
    const NTU = through.use(transferUnits, { UA, C_a }, "cooler");
    const P = through.use(arrangementOf(given.arrangement).effectiveness, { NTU, R }, given.arrangement);
    return {
      UA,
      T_3: through.use(coolerOutletTemperature, { T_in: T_2, P, T_w_in }, "cooler"),
      Tw_out: through.use(waterOutletTemperature, { T_w_in, R, P, T_in: T_2 }, "cooler"),
    };
  };
  const found = flowForOutlet({
    T_2,
    T_w_in,
    T_3: given.T_target,
    T_endless: at(Infinity, plain).T_3,
    m_least: given.mw_min,
    m_most: given.mw_max,
    at: (m_w) => at(m_w, plain).T_3,
  });
  const reach = { T_limit: found.T_endless, T_at_max: found.T_at_most, T_at_min: found.T_at_least };
  if (!found.isMet) return { ...reach, feasible: "no", reason: found.side, mw: null, UA: null, Tw_out: null };
  const { UA, Tw_out } = at(found.m_w, trace);
  return { ...reach, feasible: "yes", reason: "ok", mw: found.m_w, UA, Tw_out };
}
