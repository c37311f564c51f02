import type { Range } from "../relation/relation.ts";

/** The span of temperature in which the heat capacities of the gases were checked. */
export const nasaRange: Range = {
  input: "T",
  from: 200,
  to: 1000,
  says: "The heat capacity of air was checked from 200 to 1000 K. Below, the same formula is carried on; above, the source's second set of coefficients is used.",
};
