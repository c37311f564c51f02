import { explicit } from "../../relation/relation.ts";

/**
 * Sum of the loss coefficients around a valve, with the changes of dynamic pressure before and behind it.
 *
 * @example fittingsSum.compute({ K_ri: 0.121, K_ro: 0.242, K_Bi: 0.742, K_Bo: 0.742 }) // 0.363
 */
export const fittingsSum = explicit({
  id: "circuit/valve/fittings-sum",
  title: "Coefficients around a valve",
  inputs: {
    K_ri: { symbol: "K_ri", kind: "ratio" },
    K_ro: { symbol: "K_ro", kind: "ratio" },
    K_Bi: { symbol: "K_Bi", kind: "ratio" },
    K_Bo: { symbol: "K_Bo", kind: "ratio" },
  },
  result: { symbol: "K_sum", kind: "ratio" },
  expression: "K_ri + K_ro + K_Bi - K_Bo",
  sources: [{ key: "iec-60534-2-1", where: "sum of velocity head coefficients", standing: "from memory" }],
  compute: ({ K_ri, K_ro, K_Bi, K_Bo }) => K_ri + K_ro + K_Bi - K_Bo,
});
