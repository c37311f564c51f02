import { refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { type Air, type AirGiven, acceptAir, rateOfAir } from "./air-side.ts";
import { capacityRatio } from "./capacity-ratio.ts";
import { acceptCoolant, type Coolant } from "./coolant.ts";
import { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
import { waterOutletTemperature } from "./water-outlet-temperature.ts";
import { acceptWaterInlet, flowOf, rateOfWater, type WaterGiven } from "./water-side.ts";

/** Both streams as they enter a cooler. */
export interface Inlets {
  readonly air: Air;
  readonly coolant: Coolant;
  readonly m_w: SI;
  readonly T_w_in: SI;
}

/** Both streams as they leave it, with the heat-capacity rates in W/K that lead there. */
export interface Outlets {
  readonly T_3: SI;
  readonly T_w_out: SI;
  readonly C_a: SI;
  readonly C_w: SI;
  readonly R: SI;
  readonly P: SI;
}

/** Where air and water enter this near to each other, in K, nothing is left to cool. */
const NO_SPAN = 0.01;
/** Both outlets move by less than this, in K, in the last round. The next one, which is recorded, moves them far less. */
const SETTLED = 1e-8;
const ROUNDS = 100;

/** Checks both streams; throws a DomainError that names the field. */
export function acceptInlets(given: AirGiven & WaterGiven, trace: Trace): Inlets {
  const air = acceptAir(given);
  const coolant = acceptCoolant(given, trace);
  const T_w_in = acceptWaterInlet(given, coolant);
  refuse(
    Math.abs(air.T_2 - T_w_in) < NO_SPAN,
    "T_w_in",
    "Air and water enter equally warm, so no heat passes. The air temperature is the bound.",
    { value: air.T_2, kind: "temperature" },
  );
  const m_w = flowOf(given, coolant, T_w_in, trace);
  if (air.T_2 < T_w_in)
    trace.note({ about: "T_w_in", says: "The water is warmer than the air, so it warms it." });
  return { air, coolant, m_w, T_w_in };
}

/** One round: from assumed outlets the heat-capacity rates, from them the effectiveness, and the outlets again. */
export function oneRound(
  { air, coolant, m_w, T_w_in }: Inlets,
  assumed: { readonly T_3: SI; readonly T_w_out: SI },
  effectiveness: (C_a: SI, R: SI) => SI,
  trace: Trace,
): Outlets {
  const C_a = rateOfAir(air, assumed.T_3, trace);
  const C_w = rateOfWater(coolant, m_w, { T_w_in, T_w_out: assumed.T_w_out }, trace);
  const R = trace.use(capacityRatio, { C_a, C_w }, "cooler");
  const P = effectiveness(C_a, R);
  const T_3 = trace.use(coolerOutletTemperature, { T_in: air.T_2, P, T_w_in }, "cooler");
  const T_w_out = trace.use(waterOutletTemperature, { T_w_in, R, P, T_in: air.T_2 }, "cooler");
  return { T_3, T_w_out, C_a, C_w, R, P };
}

/**
 * Outlets at which the mean heat capacities between inlets and outlets agree with the outlets that they lead to.
 *
 * `effectiveness` is P from the heat-capacity rate of the air in W/K and R. Throws an Error after 100 rounds.
 */
export function settleOutlets(inlets: Inlets, effectiveness: (C_a: SI, R: SI) => SI): Outlets {
  const span = inlets.air.T_2 - inlets.T_w_in;
  let assumed = { T_3: inlets.air.T_2 - span / 2, T_w_out: inlets.T_w_in + span / 20 };
  for (let i = 0; i < ROUNDS; i++) {
    const found = oneRound(inlets, assumed, effectiveness, plain);
    const moved = Math.max(Math.abs(found.T_3 - assumed.T_3), Math.abs(found.T_w_out - assumed.T_w_out));
    if (moved < SETTLED) return found;
    assumed = found;
  }
  throw new Error(`the outlets of the cooler did not settle in ${ROUNDS} rounds`);
}
