import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

/** A flow of air, kg/s: above 0 to 10 000. Here and below the DomainError names `field`, and `what` begins its sentence. */
export const acceptFlow = (field: string, what: string, m: SI | undefined): SI =>
  accept(field, what, m, { kind: "massFlow", above: 0, atMost: 10_000 });

/** A temperature of air, K: 173.15 to 1000. */
export const acceptAirTemperature = (field: string, what: string, T: SI | undefined): SI =>
  accept(field, what, T, { kind: "temperature", atLeast: 173.15, atMost: 1000 });

/** A pressure of air, Pa absolute: above 0 to 5 MPa. */
export const acceptAbsolutePressure = (field: string, what: string, p: SI | undefined): SI =>
  accept(field, what, p, { kind: "pressure", above: 0, atMost: 5e6 });

/** A humidity ratio, kg/kg: 0 to 1. Air without one is dry. */
export const acceptHumidityRatio = (field: string, w: SI | undefined): SI =>
  accept(field, "The humidity ratio", w ?? 0, { kind: "humidityRatio", atLeast: 0, atMost: 1 });
