import { explicit } from "../relation/relation.ts";

/**
 * What two compressors cost the crankshaft, W: the shaft power of each times what a watt of it costs there.
 *
 * @example weightedPower.compute({ W_c1: 28734, W_c2: 102836, chi_1: 1.0526, chi_2: 0.2 }) // 50813 W
 */
export const weightedPower = explicit({
  id: "compression/weighted-power",
  title: "What both compressors cost the crankshaft",
  inputs: {
    chi_1: { symbol: "chi_1", kind: "ratio" },
    W_c1: { symbol: "W_c1", kind: "power" },
    chi_2: { symbol: "chi_2", kind: "ratio" },
    W_c2: { symbol: "W_c2", kind: "power" },
  },
  result: { symbol: "W_x", kind: "power" },
  expression: "chi_1 * W_c1 + chi_2 * W_c2",
  sources: [{ key: "moran-shapiro", where: "chapter 9, compression in stages", standing: "derived here" }],
  compute: ({ chi_1, W_c1, chi_2, W_c2 }) => chi_1 * W_c1 + chi_2 * W_c2,
});
