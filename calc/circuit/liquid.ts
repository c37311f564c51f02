import { saturationOverWater } from "../fluids/saturation-over-water.ts";
import { waterDensity } from "../fluids/water/liquid-water.ts";
import { acceptLiquid, liquidViscosity } from "../fluids/water/water.ts";
import { critical } from "../fluids/water/water-constants.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";

/** Fresh water at a temperature in K, or a liquid whose properties are known: kg/m³, Pa s, Pa absolute. */
export interface LiquidGiven {
  readonly liquid: "water" | "stated";
  readonly T_w?: SI | undefined;
  readonly rho_w?: SI | undefined;
  readonly mu_w?: SI | undefined;
  readonly p_v?: SI | undefined;
  readonly p_crit?: SI | undefined;
}

/** kg/m³, Pa s, Pa absolute. */
export interface Liquid {
  readonly rho: SI;
  readonly mu: SI;
  readonly p_v: SI;
  readonly p_crit: SI;
}

/** Density and viscosity of water, by K and Pa absolute; what cannot be is refused at the fields that are named. */
export function waterAt(
  state: { readonly T: SI; readonly p: SI },
  fields: { readonly T: string; readonly p: string },
  trace: Trace,
): Pick<Liquid, "rho" | "mu"> {
  try {
    acceptLiquid(state, plain, "water");
    return { rho: waterDensity(state, trace, "water"), mu: liquidViscosity(state, trace, "water") };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    throw new DomainError(error.field === "T" ? fields.T : fields.p, error.message, error.limit);
  }
}

/**
 * The liquid at the pressure `p` in Pa absolute, which was given as `field`. Throws a DomainError that names what is missing,
 * freezes or boils.
 */
export function liquidOf(given: LiquidGiven, p: SI, field: string, trace: Trace): Liquid {
  if (given.liquid === "water") {
    const T = accept("T_w", "The temperature of the water", given.T_w, {
      kind: "temperature",
      atLeast: 273.15,
      atMost: 473.15,
    });
    const { rho, mu } = waterAt({ T, p }, { T: "T_w", p: field }, trace);
    return { rho, mu, p_v: trace.use(saturationOverWater, { T }, "water"), p_crit: critical.p };
  }
  return {
    rho: accept("rho_w", "The density of the liquid", given.rho_w, {
      kind: "density",
      atLeast: 300,
      atMost: 3000,
    }),
    mu: accept("mu_w", "The viscosity of the liquid", given.mu_w, {
      kind: "viscosity",
      atLeast: 1e-7,
      atMost: 10,
    }),
    p_v: accept("p_v", "The vapour pressure of the liquid", given.p_v, {
      kind: "pressure",
      atLeast: 0,
      below: p,
    }),
    p_crit: accept("p_crit", "The critical pressure of the liquid", given.p_crit ?? critical.p, {
      kind: "pressure",
      atLeast: 1e6,
      atMost: 1e8,
    }),
  };
}
