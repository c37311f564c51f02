import { explicit } from "../../relation/relation.ts";

/**
 * Nusselt number of turbulent flow in a smooth tube by powers alone: n_Pr is 0.4 for a fluid that is heated, and 0.3 for one that
 * is cooled.
 *
 * @example powerLawNusselt.compute({ Re: 10000, Pr: 5, n_Pr: 0.4 }) // 69.393
 */
export const powerLawNusselt = explicit({
  id: "exchanger/film/power-law-nusselt",
  title: "Nusselt number of turbulent flow by powers",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    Pr: { symbol: "Pr", kind: "ratio" },
    n_Pr: { symbol: "n_Pr", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression: "0.023 * Re^0.8 * Pr^n_Pr",

  sources: [
    {
      key: "incropera-dewitt",
      where: "chapter 8, equation after Dittus and Boelter",
      standing: "from memory",
    },
  ],
  ranges: [
    {
      input: "Re",
      from: 10000,
      to: 120_000,
      says: "The formula is for flow that is turbulent throughout; past the bound it is a good deal too high or was not measured.",
    },
    { input: "Pr", from: 0.7, to: 160, says: "The formula was fitted to fluids within the bound." },
  ],
  accuracy: "25 %",
  compute: ({ Re, Pr, n_Pr }) => 0.023 * Re ** 0.8 * Pr ** n_Pr,
});
