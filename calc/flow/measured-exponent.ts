import { explicit } from "../relation/relation.ts";

/**
 * Exponent of a pressure loss over the flow from two readings: their loss coefficients differ by a power of their Reynolds
 * numbers, which have to differ. So neither density nor viscosity passes for the flow.
 *
 * @example measuredExponent.compute({ X_K: 0.7648, X_Re: 3 }) // 1.756
 */
export const measuredExponent = explicit({
  id: "flow/measured-exponent",
  title: "Exponent from two readings",
  inputs: {
    X_K: { symbol: "X_K", kind: "ratio" },
    X_Re: { symbol: "X_Re", kind: "ratio" },
  },
  result: { symbol: "n_p", kind: "ratio" },
  expression: "2 + log(X_K) / log(X_Re)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 6, pressure drop as a power of the flow",
      standing: "derived here",
    },
  ],
  compute: ({ X_K, X_Re }) => 2 + Math.log(X_K) / Math.log(X_Re),
});
