import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { acceptFuel, type FuelGiven } from "./cycle.ts";
import { dryAirFromFuel } from "./dry-air-from-fuel.ts";
import { fuelFlow } from "./fuel-flow.ts";
import { fuelFlowFromAir } from "./fuel-flow-from-air.ts";
import { powerFromFuel } from "./power-from-fuel.ts";

/** Brake power in W or dry air in kg/s, whichever is not looked for; fuel and mixture. */
export interface PowerAirGiven extends FuelGiven {
  readonly find: "air" | "power";
  readonly W_e?: SI | undefined;
  readonly m_da?: SI | undefined;
}

/** W, kg/s. */
export interface PowerAir {
  readonly W_e: SI;
  readonly m_da: SI;
  readonly m_f: SI;
}

/**
 * The dry air that a power takes, or the power that an air flow carries, through the fuel between them.
 *
 * Throws a DomainError for a missing or impossible input.
 *
 * @example powerAir({ find: "air", W_e: 235e3, b: 300 / 3.6e9, lambda: 0.85, AFR_st: 14.6 }).m_da // 0.243 kg/s
 */
export const powerAir: Model<PowerAirGiven, PowerAir> = (given, trace = plain) => {
  const { b, lambda, AFR_st } = acceptFuel(given);
  if (given.find === "air") {
    const W_e = accept("W_e", "The brake power", given.W_e, { kind: "power", above: 0, atMost: 1e9 });
    const m_f = trace.use(fuelFlow, { b, W_e }, "engine");
    return { W_e, m_f, m_da: trace.use(dryAirFromFuel, { lambda, AFR_st, m_f }, "engine") };
  }
  const m_da = accept("m_da", "The air flow", given.m_da, { kind: "massFlow", above: 0, atMost: 10_000 });
  const m_f = trace.use(fuelFlowFromAir, { m_da, lambda, AFR_st }, "engine");
  return { m_da, m_f, W_e: trace.use(powerFromFuel, { m_f, b }, "engine") };
};
