import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { temperatureAtDensity } from "../fluids/temperature-at-density.ts";
import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { AIR_TEMPERATURE } from "./air-side.ts";
import { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
import { outletForDensityRatio } from "./outlet-for-density-ratio.ts";

/**
 * What another cooler makes of air that enters at `T_2` K: an outlet `T_3` in K; an effectiveness `P_t` with its own coolant at
 * `T_t_in` K; a density ratio `D_rho` across it, between `p_2` Pa absolute and what its loss `Delta_p_t` leaves; or a density
 * `rho_m` in kg/m³ behind it at `p_m` Pa absolute, with `w` kg/kg of humidity.
 */
export interface TargetGiven {
  readonly target: "outlet" | "effectiveness" | "ratio" | "density";
  readonly T_2?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly P_t?: SI | undefined;
  readonly T_t_in?: SI | undefined;
  readonly D_rho?: SI | undefined;
  readonly p_2?: SI | undefined;
  readonly Delta_p_t?: SI | undefined;
  readonly rho_m?: SI | undefined;
  readonly p_m?: SI | undefined;
  readonly w?: SI | undefined;
}

/** The outlet in K, and the field that asked for it. */
export interface TargetOutlet {
  readonly T_3: SI;
  readonly field: string;
}

const PRESSURE = { kind: "pressure", above: 0, atMost: 5e6 } as const;

function byEffectiveness(given: TargetGiven, T_2: SI, trace: Trace): SI {
  const P = accept("P_t", "The effectiveness of the other cooler", given.P_t, {
    kind: "fraction",
    above: 0,
    atMost: 1,
  });
  const T_w_in = accept("T_t_in", "The temperature of what cools it", given.T_t_in, AIR_TEMPERATURE);
  refuse(
    T_w_in >= T_2,
    "T_t_in",
    "What cools the other cooler is no colder than the air before it. It has to be below the bound.",
    { value: T_2, kind: "temperature" },
  );
  return trace.use(coolerOutletTemperature, { T_in: T_2, P, T_w_in }, "other cooler");
}

function byRatio(given: TargetGiven, T_2: SI, trace: Trace): SI {
  const p_in = accept("p_2", "The pressure before the cooler, absolute,", given.p_2, PRESSURE);
  const D_rho = accept("D_rho", "The density ratio", given.D_rho, { kind: "ratio", above: 0, atMost: 100 });
  const Delta_p = accept("Delta_p_t", "The pressure lost in the other cooler", given.Delta_p_t, {
    kind: "pressureDifference",
    atLeast: 0,
    below: p_in,
  });
  const p_out = trace.use(pressureAfterLoss, { p_in, Delta_p }, "other cooler");
  return trace.use(outletForDensityRatio, { T_in: T_2, p_in, p_out, D_rho }, "other cooler");
}

function byDensity(given: TargetGiven, trace: Trace): SI {
  const p = accept("p_m", "The pressure in the manifold, absolute,", given.p_m, PRESSURE);
  const rho = accept("rho_m", "The density in the manifold", given.rho_m, {
    kind: "density",
    above: 0,
    atMost: 100,
  });
  const w = accept("w", "The humidity ratio", given.w ?? 0, { kind: "humidityRatio", atLeast: 0, atMost: 1 });
  const R_m = trace.use(gasConstant, { w }, "charge");
  return trace.use(temperatureAtDensity, { p, R_m, rho }, "manifold");
}

function asked(given: TargetGiven, T_2: SI, trace: Trace): TargetOutlet {
  switch (given.target) {
    case "effectiveness":
      return { T_3: byEffectiveness(given, T_2, trace), field: "P_t" };
    case "ratio":
      return { T_3: byRatio(given, T_2, trace), field: "D_rho" };
    case "density":
      return { T_3: byDensity(given, trace), field: "rho_m" };
    default:
      return {
        T_3: accept("T_3", "The wanted temperature after the cooler", given.T_3, AIR_TEMPERATURE),
        field: "T_3",
      };
  }
}

/**
 * The air outlet in K that a cooler has to make, so that it does what another one does.
 *
 * Throws a DomainError that names the field, for what cannot be and for an outlet that no charge air has.
 *
 * @example
 * targetOutlet({ target: "effectiveness", T_2: 458.15, P_t: 0.78, T_t_in: 298.15 }).T_3 // 333.35 K
 */
export const targetOutlet: Model<TargetGiven, TargetOutlet> = (given, trace = plain) => {
  const T_2 = accept("T_2", "The air temperature before the cooler", given.T_2, AIR_TEMPERATURE);
  const found = asked(given, T_2, trace);
  const { atLeast, atMost } = AIR_TEMPERATURE;
  if (found.T_3 < atLeast || found.T_3 > atMost)
    throw new DomainError(
      found.field,
      "That would be air so cold or so hot behind the cooler that no charge is. Look for a wrong unit, or a gauge pressure taken as absolute. It would leave at the bound.",
      { value: found.T_3, kind: "temperature" },
    );
  return found;
};
