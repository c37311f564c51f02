import { massFlow } from "../fluids/mass-flow.ts";
import { boilingMargin } from "../fluids/water/boiling-margin.ts";
import { boilingTemperature } from "../fluids/water/boiling-temperature.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { capacityRate } from "./capacity-rate.ts";
import { type Coolant, type CoolantGiven, coolantBounds, densityAt, meanOfWater } from "./coolant.ts";

/** The coolant, its temperature in K, and its flow in kg/s or in m³/s at the inlet. */
export interface WaterGiven extends CoolantGiven {
  readonly flow?: "mass" | "volume" | undefined;
  readonly m_w?: SI | undefined;
  readonly V_w?: SI | undefined;
  readonly T_w_in?: SI | undefined;
}

/** Temperature of the liquid at its inlet, above where it freezes; throws a DomainError that names T_w_in. */
export const acceptWaterInlet = (given: WaterGiven, coolant: Coolant): SI =>
  accept("T_w_in", "The water temperature at the inlet", given.T_w_in, coolantBounds(coolant));

/** The same at its outlet, where it was read or is wanted; names T_w_out. */
export const acceptWaterOutlet = (T_w_out: SI | undefined, coolant: Coolant): SI =>
  accept("T_w_out", "The water temperature at the outlet", T_w_out, coolantBounds(coolant));

/** Water flow in kg/s; throws a DomainError that names m_w, V_w or rho_w. */
export function flowOf(given: WaterGiven, coolant: Coolant, T_w_in: SI, trace: Trace): SI {
  if (given.flow !== "volume")
    return accept("m_w", "The water flow", given.m_w, { kind: "massFlow", above: 0, atMost: 10_000 });
  const V_dot = accept("V_w", "The water flow", given.V_w, { kind: "liquidFlow", above: 0, atMost: 10 });
  return trace.use(massFlow, { rho: densityAt(given, coolant, T_w_in, trace), V_dot }, "water");
}

/** With less water than a hundredth of what the air carries there is nothing to cool with. */
export const LARGEST_RATIO = 100;

/** Refuses a flow of m_w kg/s that would have to be `part` times as large, and names that bound in the way it was given. */
export function refuseFlow(given: WaterGiven, m_w: SI, part: SI, says: string): never {
  if (given.flow === "volume")
    throw new DomainError("V_w", says, { value: (given.V_w ?? 0) * part, kind: "liquidFlow" });
  throw new DomainError("m_w", says, { value: m_w * part, kind: "massFlow" });
}

/** Refuses a ratio of heat-capacity rates R with hardly any water. */
export function refuseScarceWater(given: WaterGiven, m_w: SI, R: SI): void {
  if (R > LARGEST_RATIO)
    refuseFlow(
      given,
      m_w,
      R / LARGEST_RATIO,
      "That is hardly any water for so much air. It has to be above the bound.",
    );
}

/** W/K of a liquid flow, kg/s, between two temperatures. */
export const rateOfWater = (
  coolant: Coolant,
  m_w: SI,
  span: { readonly T_w_in: SI; readonly T_w_out: SI },
  trace: Trace,
): SI =>
  trace.use(capacityRate, { m: m_w, c_m: meanOfWater(coolant, span.T_w_in, span.T_w_out, trace) }, "water");

/**
 * Kelvin to boiling of the water where it is hottest, at one of its ends, with a note where there are none left. Seawater
 * boils half a kelvin later than the fresh water that it is taken for here, and mixtures with glycol some kelvins later.
 */
export function marginToBoiling(
  coolant: Coolant,
  { T_w_in, T_w_out }: { readonly T_w_in: SI; readonly T_w_out: SI },
  trace: Trace,
): SI | undefined {
  if (coolant.kind === "stated") return undefined;
  const isOutlet = T_w_out >= T_w_in;
  const where = isOutlet ? "water, at the outlet" : "water, at the inlet";
  const T_sat = trace.use(boilingTemperature, { p: coolant.p_w }, where);
  const margin = trace.use(boilingMargin, { T_sat, T: Math.max(T_w_in, T_w_out) }, where);
  if (margin <= 0)
    trace.note({
      about: isOutlet ? "T_w_out" : "T_w_in",
      says: "The water would boil. The numbers hold only for water that stays liquid: give it more flow or more pressure. The hot wall boils sooner than the stream. At this pressure water boils at the bound.",
      limit: { value: T_sat, kind: "temperature" },
    });
  return margin;
}
