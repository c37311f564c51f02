import { explicit } from "../../relation/relation.ts";

/**
 * Darcy friction factor of turbulent flow in a smooth tube, with the natural logarithm of the Reynolds number: the same curve as exchanger/film/smooth-friction-factor, its first number rounded.
 *
 * @example roundedFrictionFactor.compute({ Re: 10000 }) // 0.031480
 */
export const roundedFrictionFactor = explicit({
  id: "exchanger/film/rounded-friction-factor",
  title: "Friction factor of turbulent flow in a smooth tube, other rounding",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
  },
  result: { symbol: "f", kind: "ratio" },
  expression: "(0.79 * log(Re) - 1.64)^(-2)",

  sources: [{ key: "petukhov-1970", where: "friction in smooth tubes", standing: "from memory" }],
  ranges: [
    { input: "Re", from: 3000, to: 5000000.0, says: "The formula is for turbulent flow within the bound." },
  ],
  compute: ({ Re }) => (0.79 * Math.log(Re) - 1.64) ** -2,
});
