import { refuse } from "../quantity/accept.ts";
import { implicit } from "../relation/relation.ts";
import { inSeriesCounterOf, refuseHotterWater } from "./in-series-counter.ts";

/** Throws a DomainError for N_p unless it is a whole number from one on. */
export function refusePartsOfPass(N_p: number): void {
  refuse(
    !Number.isInteger(N_p) || N_p < 1,
    "N_p",
    "The number of passes has to be a whole number, one or more.",
  );
}

/** The same as a plain function. */
export function passesCounterOf(P_p: number, R: number, passes: number): number {
  let P = P_p;
  for (let i = 1; i < passes; i++) P = inSeriesCounterOf(P, P_p, R);
  return P;
}

/**
 * Temperature effectiveness (0 to 1) of N_p equal passes in series, the water against the air and both streams mixed from
 * pass to pass. P_p is that of one pass, with its part of the transfer units and the same R, on the air.
 *
 * Each side of the equation is a ratio of the differences at the two ends: that of the whole is the product of those of
 * the passes. For R = 1, where all of them are 1, P = N_p P_p/(1 + (N_p - 1) P_p). Throws a DomainError naming N_p where it
 * is no whole number, and P_p where P_p or R P_p is above 1.
 *
 * @example passesCounter.compute({ P_p: 0.5, R: 0.5, N_p: 3 }) // 0.8261
 */
export const passesCounter = implicit({
  id: "exchanger/passes-counter",
  title: "Equal passes in series, water against the air",
  inputs: {
    P_p: { symbol: "P_p", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
    N_p: { symbol: "N_p", kind: "ratio" },
  },
  result: { symbol: "P", kind: "fraction" },
  residual: "(1 - R * P) / (1 - P) - ((1 - R * P_p) / (1 - P_p))^N_p",
  unknown: "P",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "from memory" },
    { key: "kays-london", where: "chapter 2, multipass overall-counterflow", standing: "from memory" },
  ],
  compute: ({ P_p, R, N_p }) => {
    refusePartsOfPass(N_p);
    refuseHotterWater("P_p", P_p, R);
    return passesCounterOf(P_p, R, N_p);
  },
});
