import { explicit } from "../../relation/relation.ts";

/**
 * Nusselt number of turbulent flow far from the entrance of a tube, from the Darcy friction factor of the same flow, which may
 * be that of a rough tube.
 *
 * @example turbulentNusselt.compute({ Re: 10000, Pr: 5, f: 0.0308829503 }) // 68.985
 */
export const turbulentNusselt = explicit({
  id: "exchanger/film/turbulent-nusselt",
  title: "Nusselt number of turbulent flow in a tube",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    Pr: { symbol: "Pr", kind: "ratio" },
    f: { symbol: "f", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression: "f / 8 * (Re - 1000) * Pr / (1 + 12.7 * sqrt(f / 8) * (Pr^(2 / 3) - 1))",

  sources: [
    { key: "gnielinski-1976", where: "equation for the range from transition on", standing: "from memory" },
  ],
  ranges: [
    { input: "Re", from: 4000, to: 5000000.0, says: "The formula is for turbulent flow within the bound." },
    { input: "Pr", from: 0.5, to: 2000, says: "The formula was fitted to fluids within the bound." },
  ],
  accuracy: "10 %",
  compute: ({ Re, Pr, f }) =>
    ((f / 8) * (Re - 1000) * Pr) / (1 + 12.7 * Math.sqrt(f / 8) * (Pr ** (2 / 3) - 1)),
});
