import { compressedWaterDensity } from "../../fluids/water/compressed-water-density.ts";
import { bracketedRoot } from "../../numerics/bracketed-root.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain } from "../../relation/trace.ts";
import { waterAt } from "../liquid.ts";
import { trappedDensity } from "./trapped-density.ts";

/**
 * Fresh water between two closed valves: its temperature and pressure when they were closed, the temperature that it comes
 * to, K and Pa absolute; linear expansion of the wall in 1/K, and what of its volume the vessel gains with each Pa.
 */
export interface LockedInGiven {
  readonly T_in?: SI | undefined;
  readonly T_out?: SI | undefined;
  readonly p_in?: SI | undefined;
  readonly alpha_l?: SI | undefined;
  readonly chi_V?: SI | undefined;
}

/** Pa absolute, Pa, kg/m³. */
export interface LockedIn {
  readonly p_out: SI;
  readonly Delta_p: SI;
  readonly rho_out: SI;
}

/** As far as the equations for water go. */
const MOST = 1e8;

/**
 * Pressure of water that is locked in and warms: its mass stays, and its density follows the stretch of the vessel. The
 * density is that of real water, which stretches ever more with temperature, so no expansion is guessed. Sought to 1 Pa.
 *
 * Throws a DomainError for water that would freeze or boil, and where the pressure would leave the equations at 100 MPa.
 * Water that cools pulls away from the wall instead, and is refused.
 *
 * @example lockedIn({ T_in: 288.15, T_out: 298.15, p_in: 2e5, alpha_l: 0, chi_V: 0 }).Delta_p // 4.585e6 Pa
 */
export const lockedIn: Model<LockedInGiven, LockedIn> = (given, trace = plain) => {
  const warm = { kind: "temperature", atLeast: 273.15, atMost: 623.15 } as const;
  const T_in = accept("T_in", "The temperature when the valves were closed", given.T_in, warm);
  const T_out = accept("T_out", "The temperature that the water comes to", given.T_out, warm);
  const p_in = accept("p_in", "The pressure when the valves were closed, absolute,", given.p_in, {
    kind: "pressure",
    atLeast: 1,
    atMost: 5e7,
  });
  const alpha_l = accept("alpha_l", "The thermal expansion of the wall", given.alpha_l, {
    kind: "expansivity",
    atLeast: 0,
    atMost: 3e-4,
  });
  const chi_V = accept("chi_V", "The compliance of the vessel", given.chi_V, {
    kind: "compliance",
    atLeast: 0,
    atMost: 1e-4,
  });
  waterAt({ T: T_in, p: p_in }, { T: "T_in", p: "p_in" }, plain);
  const Delta_T = T_out - T_in;
  // One description for both states, since a difference between two would pass for pressure.
  const rho_in = trace.use(compressedWaterDensity, { T: T_in, p: p_in }, "water when locked in");
  const vessel = { rho_in, alpha_l, Delta_T, chi_V };
  const excess = (p: SI) =>
    compressedWaterDensity.compute({ T: T_out, p }) -
    trappedDensity.compute({ ...vessel, Delta_p: p - p_in });
  refuse(
    excess(p_in) > 0,
    "T_out",
    "Water that shrinks more than its vessel leaves a gap, and makes no pressure. It has to warm, and from some degrees above its densest state on it grows more than a metal wall.",
  );
  refuse(
    excess(MOST) < 0,
    "T_out",
    "The pressure would pass 100 MPa: every vessel bursts before. A smaller rise of temperature is needed.",
  );
  const p_out = bracketedRoot(excess, p_in, MOST, { tolerance: 1 });
  const Delta_p = p_out - p_in;
  const rho_out = trace.use(trappedDensity, { ...vessel, Delta_p }, "locked-in water");
  return { p_out, Delta_p, rho_out };
};
