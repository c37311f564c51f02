import { explicit } from "../relation/relation.ts";

/**
 * Shaft power in W of two compressors in series.
 *
 * @example totalPower.compute({ W_c1: 28734, W_c2: 102836 }) // 131570 W
 */
export const totalPower = explicit({
  id: "compression/total-power",
  title: "Shaft power of two compressors",
  inputs: {
    W_c1: { symbol: "W_c1", kind: "power" },
    W_c2: { symbol: "W_c2", kind: "power" },
  },
  result: { symbol: "W_c12", kind: "power" },
  expression: "W_c1 + W_c2",
  sources: [{ key: "moran-shapiro", where: "chapter 9, compression in stages", standing: "from memory" }],
  compute: ({ W_c1, W_c2 }) => W_c1 + W_c2,
});
