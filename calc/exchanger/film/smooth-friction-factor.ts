import { explicit } from "../../relation/relation.ts";

/**
 * Darcy friction factor of turbulent flow in a smooth tube, with the decimal logarithm of the Reynolds number.
 *
 * @example smoothFrictionFactor.compute({ Re: 10000 }) // 0.031437
 */
export const smoothFrictionFactor = explicit({
  id: "exchanger/film/smooth-friction-factor",
  title: "Friction factor of turbulent flow in a smooth tube",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
  },
  result: { symbol: "f", kind: "ratio" },
  expression: "(1.82 * log(Re) / log(10) - 1.64)^(-2)",

  sources: [{ key: "filonenko-1954", where: "smooth tubes", standing: "from memory" }],
  ranges: [
    { input: "Re", from: 4000, to: 5000000.0, says: "The formula is for turbulent flow within the bound." },
  ],
  compute: ({ Re }) => (1.82 * Math.log10(Re) - 1.64) ** -2,
});
