import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
import { temperatureEffectiveness } from "./temperature-effectiveness.ts";

/**
 * A charge cooler as its user knows it: none; or by its temperature effectiveness `P` and the water inlet in K; or by the
 * outlet temperature in K that was read or wanted. The loss in Pa.
 */
export interface CoolerGiven {
  readonly cooler: "none" | "effectiveness" | "temperature";
  readonly P?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly Delta_p_23?: SI | undefined;
}

export type Cooler =
  | { readonly kind: "none" }
  | { readonly kind: "effectiveness"; readonly P: SI; readonly T_w_in: SI; readonly Delta_p: SI }
  | { readonly kind: "temperature"; readonly T_3: SI; readonly T_w_in: SI | undefined; readonly Delta_p: SI };

/** Where the air is hotter than the water by less than this, in K, an effectiveness has no meaning. */
const NO_SPAN = 1e-9;
const WATER = { kind: "temperature", atLeast: 223.15, atMost: 473.15 } as const;

/** Checks the cooler's data; throws a DomainError that names P, T_w_in, T_3 or Delta_p_23. */
export function acceptCooler(given: CoolerGiven): Cooler {
  if (given.cooler === "none") return { kind: "none" };
  const Delta_p = accept("Delta_p_23", "The loss of the cooler", given.Delta_p_23 ?? 0, {
    kind: "pressureDifference",
    atLeast: 0,
  });
  if (given.cooler === "effectiveness") {
    const P = accept("P", "The temperature effectiveness", given.P, { kind: "fraction", atLeast: 0 });
    refuse(
      P > 1,
      "P",
      "With this temperature effectiveness the air would leave colder than the water enters. It may be as high as the bound.",
      { value: 1, kind: "fraction" },
    );
    const T_w_in = accept("T_w_in", "The water temperature at the inlet", given.T_w_in, WATER);
    return { kind: "effectiveness", P, T_w_in, Delta_p };
  }
  const T_3 = accept("T_3", "The temperature after the cooler", given.T_3, {
    kind: "temperature",
    atLeast: 173.15,
    atMost: 1000,
  });
  const { T_w_in } = given;
  if (T_w_in === undefined) return { kind: "temperature", T_3, T_w_in, Delta_p };
  accept("T_w_in", "The water temperature at the inlet", T_w_in, WATER);
  refuse(
    T_3 < T_w_in,
    "T_3",
    "The air after the cooler is colder than the water that enters. It has to be at or above the water temperature.",
    { value: T_w_in, kind: "temperature" },
  );
  return { kind: "temperature", T_3, T_w_in, Delta_p };
}

/** Pressure and temperature after the cooler, and its effectiveness where water colder than the air says it. */
export function cool(
  cooler: Exclude<Cooler, { kind: "none" }>,
  air: { readonly p_2: SI; readonly T_2: SI },
  trace: Trace,
): { readonly p_3: SI; readonly T_3: SI; readonly P: SI | undefined } {
  const { p_2, T_2 } = air;
  const p_3 = trace.use(pressureAfterLoss, { p_in: p_2, Delta_p: cooler.Delta_p }, "cooler");
  if (cooler.kind === "effectiveness") {
    const { P, T_w_in } = cooler;
    return { p_3, T_3: trace.use(coolerOutletTemperature, { T_in: T_2, P, T_w_in }, "cooler"), P };
  }
  const { T_3, T_w_in } = cooler;
  const P =
    T_w_in === undefined || T_2 - T_w_in < NO_SPAN
      ? undefined
      : trace.use(temperatureEffectiveness, { T_in: T_2, T_out: T_3, T_w_in }, "cooler");
  return { p_3, T_3, P };
}
