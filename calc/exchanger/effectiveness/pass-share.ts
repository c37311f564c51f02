import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/** The same as a plain function. */
export const passShareOf = (NTU: number, passes: number): number => -Math.expm1(-NTU / passes);

/**
 * What the air loses of its distance to the water while it crosses one of N_p equal passes or rows, 0 to 1; NTU of the
 * whole cooler, on the air.
 *
 * @example passShare.compute({ NTU: 2, N_p: 2 }) // 0.6321
 */
export const passShare = explicit({
  id: "exchanger/effectiveness/pass-share",
  title: "Share of the approach lost in one pass",
  inputs: { NTU: onTheAir.inputs.NTU, N_p: { symbol: "N_p", kind: "ratio" } },
  result: { symbol: "Gamma", kind: "fraction" },
  name: "Gamma",
  expression: "1 - exp(-NTU / N_p)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, one stream at constant temperature",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, N_p }) => passShareOf(NTU, N_p),
});
