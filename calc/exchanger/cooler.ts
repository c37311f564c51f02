import { lossAsPart } from "../flow/loss-as-part.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
import { temperatureEffectiveness } from "./temperature-effectiveness.ts";

/**
 * A charge cooler as its user knows it: none; or by its temperature effectiveness `P` and the water inlet in K; or by the
 * outlet temperature of the air in K that was read or wanted. The loss in Pa, or as the part `zeta` of the pressure before it.
 */
export interface CoolerGiven {
  readonly cooler: "none" | "effectiveness" | "temperature";
  readonly P?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly T_out?: SI | undefined;
  readonly Delta_p?: SI | undefined;
  readonly zeta?: SI | undefined;
}

/** The inputs that hold a cooler's data, for messages. */
export type CoolerFields = Readonly<Record<"P" | "T_w_in" | "T_out" | "Delta_p", string>> & {
  readonly zeta?: string;
};

/** A loss that is a part of the pressure is told by `zeta`; then `Delta_p` is not looked at. */
interface Loss {
  readonly Delta_p: SI;
  readonly zeta?: SI | undefined;
}

export type Cooler =
  | { readonly kind: "none" }
  | (Loss & { readonly kind: "effectiveness"; readonly P: SI; readonly T_w_in: SI })
  | (Loss & { readonly kind: "temperature"; readonly T_out: SI; readonly T_w_in: SI | undefined });

/** Where the air is hotter than the water by less than this, in K, an effectiveness has no meaning. */
const NO_SPAN = 1e-9;
/** What runs through a charge cooler, K. */
export const COOLANT_TEMPERATURE = { kind: "temperature", atLeast: 223.15, atMost: 473.15 } as const;

/** Checks the cooler's data; throws a DomainError that names one of its fields. */
export function acceptCooler(given: CoolerGiven, fields: CoolerFields): Cooler {
  if (given.cooler === "none") return { kind: "none" };
  const what = "The loss of the cooler";
  const Delta_p = accept(fields.Delta_p, what, given.Delta_p ?? 0, {
    kind: "pressureDifference",
    atLeast: 0,
  });
  const zeta =
    given.zeta === undefined
      ? undefined
      : accept(fields.zeta ?? "zeta", what, given.zeta, { kind: "fraction", atLeast: 0, below: 1 });
  const water = "The water temperature at the inlet";
  if (given.cooler === "effectiveness") {
    const P = accept(fields.P, "The temperature effectiveness", given.P, { kind: "fraction", atLeast: 0 });
    refuse(
      P > 1,
      fields.P,
      "With this temperature effectiveness the air would leave colder than the water enters. It may be as high as the bound.",
      { value: 1, kind: "fraction" },
    );
    const T_w_in = accept(fields.T_w_in, water, given.T_w_in, COOLANT_TEMPERATURE);
    return { kind: "effectiveness", P, T_w_in, Delta_p, zeta };
  }
  const T_out = accept(fields.T_out, "The temperature after the cooler", given.T_out, {
    kind: "temperature",
    atLeast: 173.15,
    atMost: 1000,
  });
  const { T_w_in } = given;
  if (T_w_in === undefined) return { kind: "temperature", T_out, T_w_in, Delta_p, zeta };
  accept(fields.T_w_in, water, T_w_in, COOLANT_TEMPERATURE);
  refuse(
    T_out < T_w_in,
    fields.T_out,
    "The air after the cooler is colder than the water that enters. It has to be at or above the water temperature.",
    { value: T_w_in, kind: "temperature" },
  );
  return { kind: "temperature", T_out, T_w_in, Delta_p, zeta };
}

/**
 * Pressure and temperature after the cooler, and its effectiveness where water colder than the air says it. `where` names
 * the cooler in the working.
 */
export function cool(
  cooler: Exclude<Cooler, { kind: "none" }>,
  air: { readonly p: SI; readonly T: SI },
  trace: Trace,
  where: string,
): { readonly p: SI; readonly T: SI; readonly P: SI | undefined } {
  const T_in = air.T;
  const { zeta } = cooler;
  const Delta_p = zeta === undefined ? cooler.Delta_p : trace.use(lossAsPart, { zeta, p_in: air.p }, where);
  const p = trace.use(pressureAfterLoss, { p_in: air.p, Delta_p }, where);
  if (cooler.kind === "effectiveness") {
    const { P, T_w_in } = cooler;
    return { p, T: trace.use(coolerOutletTemperature, { T_in, P, T_w_in }, where), P };
  }
  const { T_out, T_w_in } = cooler;
  const P =
    T_w_in === undefined || T_in - T_w_in < NO_SPAN
      ? undefined
      : trace.use(temperatureEffectiveness, { T_in, T_out, T_w_in }, where);
  return { p, T: T_out, P };
}
