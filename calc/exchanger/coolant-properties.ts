import { constants } from "../constants.ts";
import { freezingMargin } from "../fluids/freezing-margin.ts";
import { type Glycol, glycolFreezings, volumeFractionOf } from "../fluids/glycol/glycol.ts";
import { prandtlNumber } from "../fluids/prandtl-number.ts";
import { seawaterEnthalpy } from "../fluids/seawater-enthalpy.ts";
import { viscosityRatio } from "../fluids/viscosity-ratio.ts";
import { volumeHeatRatio } from "../fluids/volume-heat-ratio.ts";
import { boilingTemperature } from "../fluids/water/boiling-temperature.ts";
import { waterDensity } from "../fluids/water/liquid-water.ts";
import { liquidViscosity, waterHeatCapacity } from "../fluids/water/water.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { acceptCoolant, type Coolant, coolantBounds, MOST_GLYCOL } from "./coolant.ts";
import { filmProperties } from "./coolant-film.ts";

/**
 * Seawater of salinity `S` kg/kg, or water with glycol by mass `x_g`, by volume `phi_g`, or as much as freezes at `T_freeze` K;
 * its temperature `T` in K and its pressure `p_w` in Pa absolute.
 */
export interface CoolantPropertiesGiven {
  readonly coolant: "seawater" | Glycol;
  readonly amount: "mass" | "volume" | "freezing";
  readonly T?: SI | undefined;
  readonly p_w?: SI | undefined;
  readonly S?: SI | undefined;
  readonly x_g?: SI | undefined;
  readonly phi_g?: SI | undefined;
  readonly T_freeze?: SI | undefined;
}

/**
 * kg/m³, J/(kg K), Pa s, W/(m K), K. `X_C` and `X_mu` are against fresh water at the same temperature, where that is liquid;
 * `T_sat` is where fresh water boils; `h` is of seawater, J/kg from 0 °C at this salinity.
 */
export interface CoolantProperties {
  readonly rho: SI;
  readonly c_p: SI;
  readonly mu: SI;
  readonly k: SI;
  readonly Pr: SI;
  readonly T_f: SI;
  readonly Delta_T_f: SI;
  readonly T_sat: SI;
  readonly x_g: SI | undefined;
  readonly phi_g: SI | undefined;
  readonly X_C: SI | undefined;
  readonly X_mu: SI | undefined;
  readonly h: SI | undefined;
}

/**
 * The properties of a coolant other than fresh water, and how it stands against fresh water at the same temperature.
 *
 * Throws a DomainError that names T where the liquid freezes, T_freeze where no mixture freezes so, and else what is missing or
 * out of bounds. Where mixtures boil is not modelled: above the boiling temperature of fresh water a note says so.
 *
 * @example coolantProperties({ coolant: "ethylene-glycol", amount: "mass", x_g: 0.5, T: 293.15, p_w: 2e5 }).mu // 3.6932e-3 Pa s
 */
export const coolantProperties: Model<CoolantPropertiesGiven, CoolantProperties> = (given, trace = plain) => {
  const { coolant: liquid, p_w, S } = given;
  const coolant = acceptCoolant({ coolant: liquid, p_w, S, ...glycolOf(given) }, trace);
  // What is stated has no properties, and fresh water a page of its own: neither arrives here.
  const p = coolant.kind === "stated" ? constants.p_sl.value : coolant.p_w;
  const bounds = coolantBounds(coolant, trace);
  refuse(
    given.T !== undefined && given.T < bounds.atLeast,
    "T",
    "This liquid begins to freeze at the bound, and what is computed here is liquid. A higher temperature, or more glycol, is needed.",
    { value: bounds.atLeast, kind: "temperature" },
  );
  const T = accept("T", "The temperature of the coolant", given.T, bounds);
  const T_f = bounds.atLeast;
  const { rho, c_p, mu, k } = filmProperties({ coolant: liquid }, coolant, T, trace, "at its temperature");
  const Pr = trace.use(prandtlNumber, { c_p, mu, k }, "coolant");
  const Delta_T_f = trace.use(freezingMargin, { T, T_f }, "coolant");
  const T_sat = trace.use(boilingTemperature, { p }, "fresh water");
  noteBoiling(T, T_sat, trace);
  return {
    rho,
    c_p,
    mu,
    k,
    Pr,
    T_f,
    Delta_T_f,
    T_sat,
    ...glycolIn(coolant, trace),
    ...againstWater({ T, p, T_sat }, { rho, c_p, mu }, trace),
    h:
      coolant.kind === "seawater"
        ? trace.use(seawaterEnthalpy, { T, S: coolant.S, p }, "seawater")
        : undefined,
  };
};

/** What is known of the glycol, as the coolant takes it. */
function glycolOf(given: CoolantPropertiesGiven): {
  readonly x_g?: SI | undefined;
  readonly phi_g?: SI | undefined;
} {
  const { coolant, amount, x_g, phi_g } = given;
  if (coolant === "seawater") return {};
  if (amount === "mass") return { x_g };
  if (amount === "volume") return { phi_g: accept("phi_g", "The volume fraction of glycol", phi_g, PART) };
  return { x_g: massFractionFor(coolant, given.T_freeze) };
}

const PART = { kind: "fraction", atLeast: 0, atMost: MOST_GLYCOL } as const;

/** As much glycol, by mass, as freezes at a wanted temperature in K. */
function massFractionFor(glycol: Glycol, wanted: SI | undefined): SI {
  const freezing = (x_g: SI) => glycolFreezings[glycol].compute({ x_g });
  const T = accept("T_freeze", "The freezing temperature that is wanted", wanted, {
    kind: "temperature",
    atLeast: 100,
    atMost: 1000,
  });
  refuse(
    T >= freezing(0),
    "T_freeze",
    "Water without any glycol freezes at about the bound. The freezing temperature that is wanted has to be below it.",
    { value: freezing(0), kind: "temperature" },
  );
  refuse(
    T < freezing(MOST_GLYCOL),
    "T_freeze",
    "No mixture of this glycol that was measured freezes so late. The freezing temperature may be as low as the bound.",
    { value: freezing(MOST_GLYCOL), kind: "temperature" },
  );
  return bracketedRoot((x_g) => freezing(x_g) - T, 0, MOST_GLYCOL, { tolerance: 1e-14 });
}

function glycolIn(coolant: Coolant, trace: Trace): Pick<CoolantProperties, "x_g" | "phi_g"> {
  if (!("x_g" in coolant)) return { x_g: undefined, phi_g: undefined };
  const { kind, x_g } = coolant;
  return { x_g, phi_g: volumeFractionOf(kind, x_g, trace) };
}

function againstWater(
  { T, p, T_sat }: { readonly T: SI; readonly p: SI; readonly T_sat: SI },
  { rho, c_p, mu }: { readonly rho: SI; readonly c_p: SI; readonly mu: SI },
  trace: Trace,
): Pick<CoolantProperties, "X_C" | "X_mu"> {
  if (T < constants.T_C.value || T > T_sat) return { X_C: undefined, X_mu: undefined };
  const where = "fresh water, at the same temperature";
  const rho_w = waterDensity({ T, p }, trace, where);
  const c_p_w = waterHeatCapacity({ T, p }, trace, where);
  const mu_w = liquidViscosity({ T, p }, trace, where);
  return {
    X_C: trace.use(volumeHeatRatio, { rho, c_p, rho_w, c_p_w }, "coolant"),
    X_mu: trace.use(viscosityRatio, { mu, mu_w }, "coolant"),
  };
}

function noteBoiling(T: SI, T_sat: SI, trace: Trace): void {
  if (T <= T_sat) return;
  trace.note({
    about: "T",
    says: "Fresh water under this pressure boils at the bound. Salt or glycol lets it boil later, and how much later is not computed here: this liquid may boil.",
    limit: { value: T_sat, kind: "temperature" },
  });
}
