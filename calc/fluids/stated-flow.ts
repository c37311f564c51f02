import type { SI } from "../quantity/domain-error.ts";
import { DomainError } from "../quantity/domain-error.ts";
import { toSI } from "../quantity/units.ts";
import { type Model, plain } from "../relation/trace.ts";
import { density } from "./density.ts";
import { gasConstant } from "./gas-constant.ts";
import { massFlow } from "./mass-flow.ts";

/**
 * Conditions that a volume flow of dry air is commonly stated at. Cold to warm they differ by 7 per cent of mass, so
 * one has to be named: common practice, no source.
 */
export const statedConditions = {
  normal: { name: "0 °C and 101.325 kPa", T: 273.15, p: 101_325 },
  fifteen: { name: "15 °C and 101.325 kPa", T: 288.15, p: 101_325 },
  sixty: { name: "60 °F and 14.696 psi", T: toSI(60, "degF"), p: toSI(14.696, "psi") },
  twenty: { name: "20 °C and 101.325 kPa", T: 293.15, p: 101_325 },
} as const;

export interface StatedFlowGiven {
  readonly V_dot: SI;
  /** A key of `statedConditions`, or `meter` for the pressure and temperature given. */
  readonly conditions: keyof typeof statedConditions | "meter";
  readonly p?: SI;
  readonly T?: SI;
}

/** The mass flow of dry air behind a volume flow at stated conditions, and the density there. */
export const statedFlow: Model<StatedFlowGiven, { readonly m_a: SI; readonly rho: SI }> = (
  given,
  trace = plain,
) => {
  const at = given.conditions === "meter" ? given : statedConditions[given.conditions];
  const { p, T } = at;
  if (p === undefined || T === undefined) {
    throw new DomainError(
      "conditions",
      "The pressure and the temperature at the meter are missing. Both are needed.",
    );
  }
  const where =
    given.conditions === "meter" ? "at the meter" : `at ${statedConditions[given.conditions].name}`;
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const rho = trace.use(density, { p, R_m, T }, where);
  return { rho, m_a: trace.use(massFlow, { rho, V_dot: given.V_dot }, where) };
};
