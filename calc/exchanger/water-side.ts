import { constants } from "../constants.ts";
import { massFlow } from "../fluids/mass-flow.ts";
import { seawaterDensity } from "../fluids/seawater-density.ts";
import { seawaterHeatCapacity } from "../fluids/seawater-heat-capacity.ts";
import { boilingMargin } from "../fluids/water/boiling-margin.ts";
import { boilingTemperature } from "../fluids/water/boiling-temperature.ts";
import { waterDensity, waterEnthalpy } from "../fluids/water/liquid-water.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { capacityRate } from "./capacity-rate.ts";
import { meanHeatCapacity } from "./mean-heat-capacity.ts";
import { USUAL_WATER_PRESSURE } from "./usual-water.ts";

/**
 * What cools: fresh water at `p_w` Pa absolute, seawater of salinity `S` kg/kg, or a liquid whose heat capacity `c` in
 * J/(kg K) is known. Its flow in kg/s, or in m³/s at the inlet, where a stated liquid has the density `rho_w` kg/m³. K.
 */
export interface WaterGiven {
  readonly coolant: "water" | "seawater" | "stated";
  readonly flow?: "mass" | "volume" | undefined;
  readonly m_w?: SI | undefined;
  readonly V_w?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly p_w?: SI | undefined;
  readonly S?: SI | undefined;
  readonly c?: SI | undefined;
  readonly rho_w?: SI | undefined;
}

export type Coolant =
  | { readonly kind: "water"; readonly p_w: SI }
  | { readonly kind: "seawater"; readonly S: SI; readonly p_w: SI }
  | { readonly kind: "stated"; readonly c: SI };

const HOTTEST_WATER = 473.15;
/** Where each freezes, or what is cold enough for any other liquid, K. */
const FREEZING = { water: constants.T_C.value, seawater: 271.15, stated: 223.15 } as const;

/** A few atmospheres more change the density of seawater by a hundredth of a per cent. */
const ONE_ATMOSPHERE = constants.p_sl.value;

/** Checks the liquid; throws a DomainError that names p_w, S or c. */
export function acceptCoolant(given: WaterGiven): Coolant {
  if (given.coolant === "stated") {
    const c = accept("c", "The heat capacity of the coolant", given.c, {
      kind: "specificHeat",
      atLeast: 500,
      atMost: 10_000,
    });
    return { kind: "stated", c };
  }
  const p_w = accept("p_w", "The water pressure, absolute,", given.p_w ?? USUAL_WATER_PRESSURE, {
    kind: "pressure",
    atLeast: 5_000,
    atMost: 5e6,
  });
  if (given.coolant === "water") return { kind: "water", p_w };
  const S = accept("S", "The salinity", given.S, { kind: "fraction", atLeast: 0, atMost: 0.12 });
  return { kind: "seawater", S, p_w };
}

const bounds = (coolant: Coolant) =>
  ({ kind: "temperature", atLeast: FREEZING[coolant.kind], atMost: HOTTEST_WATER }) as const;

/** Temperature of the liquid at its inlet, above where it freezes; throws a DomainError that names T_w_in. */
export const acceptWaterInlet = (given: WaterGiven, coolant: Coolant): SI =>
  accept("T_w_in", "The water temperature at the inlet", given.T_w_in, bounds(coolant));

/** The same at its outlet, where it was read or is wanted; names T_w_out. */
export const acceptWaterOutlet = (T_w_out: SI | undefined, coolant: Coolant): SI =>
  accept("T_w_out", "The water temperature at the outlet", T_w_out, bounds(coolant));

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

/** Density of the liquid at its inlet, kg/m³; undefined for a stated liquid whose density is not known. */
export function densityOf(given: WaterGiven, coolant: Coolant, T_w_in: SI, trace: Trace): SI | undefined {
  if (coolant.kind === "stated" && given.rho_w === undefined) return undefined;
  return densityAt(given, coolant, T_w_in, trace);
}

function densityAt(given: WaterGiven, coolant: Coolant, T_w_in: SI, trace: Trace): SI {
  switch (coolant.kind) {
    case "stated":
      return accept("rho_w", "The density of the liquid", given.rho_w, {
        kind: "density",
        atLeast: 100,
        atMost: 5000,
      });
    case "seawater":
      return trace.use(
        seawaterDensity,
        { T: T_w_in, S: coolant.S, p: ONE_ATMOSPHERE },
        "seawater, at the inlet",
      );
    case "water":
      return waterDensity({ T: T_w_in, p: coolant.p_w }, trace, "water, at the inlet");
  }
}

/** Far beyond boiling, where the equations of the liquid end, K: from there on a search goes with the mean so far. */
const LIQUID_ENDS = 573.15;

/** Mean heat capacity of the liquid in J/(kg K) between two temperatures that differ. */
export function meanOfWater(coolant: Coolant, T_w_in: SI, T_w_out: SI, trace: Trace): SI {
  switch (coolant.kind) {
    case "stated":
      return coolant.c;
    case "seawater":
      return trace.use(
        seawaterHeatCapacity,
        { T: (T_w_in + T_w_out) / 2, S: coolant.S },
        "seawater, at its mean temperature",
      );
    case "water": {
      const T_out = Math.min(T_w_out, LIQUID_ENDS);
      const h_in = waterEnthalpy({ T: T_w_in, p: coolant.p_w }, trace, "water, at the inlet");
      const h_out = waterEnthalpy({ T: T_out, p: coolant.p_w }, trace, "water, at the outlet");
      return trace.use(meanHeatCapacity, { h_in, h_out, T_in: T_w_in, T_out }, "water");
    }
  }
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
 * boils half a kelvin later than the fresh water that it is taken for here.
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
