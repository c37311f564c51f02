import { explicit } from "../relation/relation.ts";

/**
 * What two compressors cost the crankshaft, W: the shaft power of each times what a watt of it costs there.
 *
 * @example weighedPower.compute({ W_c1: 28734, W_c2: 102836, omega_1: 1.0526, omega_2: 0.2 }) // 50813 W
 */
export const weighedPower = explicit({
  id: "compression/weighed-power",
  title: "What both compressors cost the crankshaft",
  inputs: {
    omega_1: { symbol: "omega_1", kind: "ratio" },
    W_c1: { symbol: "W_c1", kind: "power" },
    omega_2: { symbol: "omega_2", kind: "ratio" },
    W_c2: { symbol: "W_c2", kind: "power" },
  },
  result: { symbol: "W_x", kind: "power" },
  expression: "omega_1 * W_c1 + omega_2 * W_c2",
  sources: [{ key: "moran-shapiro", where: "chapter 9, compression in stages", standing: "derived here" }],
  compute: ({ omega_1, W_c1, omega_2, W_c2 }) => omega_1 * W_c1 + omega_2 * W_c2,
});
