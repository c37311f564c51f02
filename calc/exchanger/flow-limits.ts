import { boilingTemperature } from "../fluids/water/boiling-temperature.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain } from "../relation/trace.ts";
import { type Coolant, freezingOf } from "./coolant.ts";
import { hotWallTemperature } from "./hot-wall-temperature.ts";
import { type MovingCooler, settleMoving, type WaterInlet } from "./moving-cooler.ts";
import { SILT_SPEED } from "./seawater-notes.ts";

/** Of the logarithm of a flow, and of a temperature in K: for marks in a chart. */
const TOLERANCE = 1e-5;

/** K at which water of this pressure boils; unknown of a stated liquid. */
export const boilingOf = (coolant: Coolant): SI | undefined =>
  coolant.kind === "stated" ? undefined : boilingTemperature.compute({ p: coolant.p_w });

/** Begins anew each time: from where another search ended, an end could settle on the other side of what is sought. */
function wallOf(cooler: MovingCooler, water: WaterInlet): SI {
  const { UA_a, UA_film, T_w_out } = settleMoving(cooler, water);
  return hotWallTemperature.compute({ UA_a, T_in: cooler.air.T_2, UA_film, T_w_out });
}

/** Where a rising or falling function passes zero between two places; undefined where it does not. */
function passing(f: (x: number) => number, from: number, to: number): number | undefined {
  if (f(from) > 0 === f(to) > 0) return undefined;
  return bracketedRoot(f, from, to, { tolerance: TOLERANCE });
}

/** The flow in kg/s under which the hot wall boils the water that enters at T_w_in K; undefined where none between two flows does. */
export function boilingFlow(
  cooler: MovingCooler,
  T_w_in: SI,
  [least, most]: readonly [SI, SI],
): SI | undefined {
  const T_sat = boilingOf(cooler.coolant);
  if (T_sat === undefined) return undefined;
  const ln = passing(
    (x) => wallOf(cooler, { m_w: Math.exp(x), T_w_in }) - T_sat,
    Math.log(least),
    Math.log(most),
  );
  return ln === undefined ? undefined : Math.exp(ln);
}

/** The inlet temperature in K from which on the hot wall boils a flow of m_w kg/s; undefined where none does. */
export function boilingInlet(cooler: MovingCooler, m_w: SI): SI | undefined {
  const T_sat = boilingOf(cooler.coolant);
  const coldest = freezingOf(cooler.coolant);
  if (T_sat === undefined || T_sat >= cooler.air.T_2 || coldest >= T_sat) return undefined;
  return passing((T_w_in) => wallOf(cooler, { m_w, T_w_in }) - T_sat, coldest, T_sat);
}

/** The flow in kg/s under which seawater lets silt settle in the passages; undefined of other liquids, and of passages not known. */
export function siltFlow({ coolant, moving, film }: MovingCooler, T_w_in: SI): SI | undefined {
  if (coolant.kind !== "seawater" || "UA_ref" in moving.water) return undefined;
  return SILT_SPEED * moving.water.A * film(T_w_in)(plain).rho;
}
