import type { Range } from "../relation/relation.ts";

/** The span of temperature in which the heat capacities of the gases were checked. */
export const nasaRange: Range = {
  input: "T",
  from: 200,
  to: 1000,
  says: "The heat capacity of air was not checked at a temperature past the bound. Colder, the same formula is carried on; hotter, the second set of coefficients of its source is used.",
};
