import type { Range } from "../../relation/relation.ts";

/** Ends of the equations for liquid water at 0.1 MPa, K. Below the freezing point it is water that has not frozen yet. */
export const ATMOSPHERIC_FROM = 253.15;
export const ATMOSPHERIC_TO = 383.15;

/** The span of temperature in which the equations for liquid water at 0.1 MPa hold. */
export const atmosphericWaterRange: Range = {
  input: "T",
  from: ATMOSPHERIC_FROM,
  to: ATMOSPHERIC_TO,
  says: "The equations for water near atmospheric pressure do not hold at a temperature past the bound.",
};
