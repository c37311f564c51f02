import { constants } from "../constants.ts";
import {
  type Glycol,
  glycolDensities,
  glycolFreezings,
  glycolHeatCapacities,
  massFractionOf,
} from "../fluids/glycol/glycol.ts";
import { seawaterDensity } from "../fluids/seawater-density.ts";
import { seawaterFreezing } from "../fluids/seawater-freezing.ts";
import { seawaterHeatCapacity } from "../fluids/seawater-heat-capacity.ts";
import { waterDensity, waterEnthalpy } from "../fluids/water/liquid-water.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { meanHeatCapacity } from "./mean-heat-capacity.ts";
import { USUAL_WATER_PRESSURE } from "./usual-water.ts";

/**
 * What cools: fresh water at `p_w` Pa absolute; seawater of salinity `S` kg/kg; water with glycol, `x_g` of its mass or `phi_g`
 * of its volume; or a liquid whose heat capacity `c` in J/(kg K) is known, with its density `rho_w` in kg/m³ where it flows by
 * volume, and its viscosity `mu_w` in Pa s and conductivity `k_w` in W/(m K) where its film is computed.
 */
export interface CoolantGiven {
  readonly coolant: "water" | "seawater" | Glycol | "stated";
  readonly p_w?: SI | undefined;
  readonly S?: SI | undefined;
  readonly x_g?: SI | undefined;
  readonly phi_g?: SI | undefined;
  readonly c?: SI | undefined;
  readonly rho_w?: SI | undefined;
  readonly mu_w?: SI | undefined;
  readonly k_w?: SI | undefined;
}

export type Coolant =
  | { readonly kind: "water"; readonly p_w: SI }
  | { readonly kind: "seawater"; readonly S: SI; readonly p_w: SI }
  | { readonly kind: Glycol; readonly x_g: SI; readonly p_w: SI }
  | { readonly kind: "stated"; readonly c: SI };

const HOTTEST_WATER = 473.15;
/** Cold enough for any liquid that is not known, K. */
const COLDEST_LIQUID = 223.15;

/** A few atmospheres more change the density of seawater by a hundredth of a per cent. */
const ONE_ATMOSPHERE = constants.p_sl.value;

/** Checks the liquid; throws a DomainError that names p_w, S, x_g, phi_g or c. */
export function acceptCoolant(given: CoolantGiven, trace: Trace = plain): Coolant {
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
  if (given.coolant === "seawater") {
    const S = accept("S", "The salinity", given.S, { kind: "fraction", atLeast: 0, atMost: 0.12 });
    return { kind: "seawater", S, p_w };
  }
  return { kind: given.coolant, x_g: acceptGlycol(given, given.coolant, trace), p_w };
}

/** Mixtures were measured up to here, by mass. */
export const MOST_GLYCOL = 0.6;

const PART = { kind: "fraction", atLeast: 0, atMost: MOST_GLYCOL } as const;

function acceptGlycol({ x_g, phi_g }: CoolantGiven, glycol: Glycol, trace: Trace): SI {
  if (phi_g === undefined) return accept("x_g", "The mass fraction of glycol", x_g, PART);
  return massFractionOf(glycol, accept("phi_g", "The volume fraction of glycol", phi_g, PART), trace);
}

/** Temperature in K at which the liquid begins to freeze, or below which nobody cools with it. */
export function freezingOf(coolant: Coolant, trace: Trace = plain): SI {
  switch (coolant.kind) {
    case "water":
      return constants.T_C.value;
    case "seawater":
      return trace.use(seawaterFreezing, { S: coolant.S, p: ONE_ATMOSPHERE }, "seawater");
    case "stated":
      return COLDEST_LIQUID;
    default:
      return trace.use(glycolFreezings[coolant.kind], { x_g: coolant.x_g }, "coolant");
  }
}

/** Between freezing and the hottest water there is. */
export const coolantBounds = (coolant: Coolant, trace: Trace = plain) =>
  ({ kind: "temperature", atLeast: freezingOf(coolant, trace), atMost: HOTTEST_WATER }) as const;

/** Density of the liquid at its inlet, kg/m³; undefined for a stated liquid whose density is not known. */
export function densityOf(given: CoolantGiven, coolant: Coolant, T_w_in: SI, trace: Trace): SI | undefined {
  if (coolant.kind === "stated" && given.rho_w === undefined) return undefined;
  return densityAt(given, coolant, T_w_in, trace);
}

/** Density of the liquid at its inlet, kg/m³; throws a DomainError that names rho_w. */
export function densityAt(given: CoolantGiven, coolant: Coolant, T_w_in: SI, trace: Trace): SI {
  return densityIn(given, coolant, T_w_in, trace, "at the inlet");
}

/** The same at any temperature T in K; `at` says where that is. */
export function densityIn(given: CoolantGiven, coolant: Coolant, T: SI, trace: Trace, at: string): SI {
  switch (coolant.kind) {
    case "stated":
      return accept("rho_w", "The density of the liquid", given.rho_w, {
        kind: "density",
        atLeast: 100,
        atMost: 5000,
      });
    case "seawater":
      return trace.use(seawaterDensity, { T, S: coolant.S, p: ONE_ATMOSPHERE }, `seawater, ${at}`);
    case "water":
      return waterDensity({ T, p: coolant.p_w }, trace, `water, ${at}`);
    default:
      return trace.use(glycolDensities[coolant.kind], { T, x_g: coolant.x_g }, `coolant, ${at}`);
  }
}

/** Far beyond boiling, where the equations of the liquid end, K: from there on a search goes with the mean so far. */
export const LIQUID_ENDS = 573.15;

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
    default:
      return trace.use(
        glycolHeatCapacities[coolant.kind],
        { T: (T_w_in + T_w_out) / 2, x_g: coolant.x_g },
        "coolant, at its mean temperature",
      );
  }
}
