import { explicit } from "../relation/relation.ts";
import { refusePartsOfPass } from "./passes-counter.ts";

/**
 * Temperature effectiveness (0 to 1) of N_p equal passes in series, the water with the air and both streams mixed from
 * pass to pass. P_p is that of one pass, with its part of the transfer units and the same R, on the air.
 *
 * Throws a DomainError naming N_p where it is no whole number.
 *
 * @example passesParallel.compute({ P_p: 0.5, R: 0.5, N_p: 3 }) // 0.6563
 */
export const passesParallel = explicit({
  id: "exchanger/passes-parallel",
  title: "Equal passes in series, water with the air",
  inputs: {
    P_p: { symbol: "P_p", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
    N_p: { symbol: "N_p", kind: "ratio" },
  },
  result: { symbol: "P", kind: "fraction" },
  expression: "1 / (1 + R) * (1 - (1 - P_p * (1 + R))^N_p)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "from memory" }],
  compute: ({ P_p, R, N_p }) => {
    refusePartsOfPass(N_p);
    let P = P_p;
    for (let i = 1; i < N_p; i++) P += P_p - (1 + R) * P * P_p;
    return P;
  },
});
