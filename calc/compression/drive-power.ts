import { explicit } from "../relation/relation.ts";

/**
 * Power in W that a compressor driven by belt or gears takes from the crankshaft: its shaft power in W over the efficiency of
 * the drive, above 0 to 1.
 *
 * @example drivePower.compute({ W_c: 28734, eta_b: 0.95 }) // 30 246 W
 */
export const drivePower = explicit({
  id: "compression/drive-power",
  title: "Power from the crankshaft",
  inputs: {
    W_c: { symbol: "W_c", kind: "power" },
    eta_b: { symbol: "eta_b", kind: "fraction" },
  },
  result: { symbol: "W_b", kind: "power" },
  expression: "W_c / eta_b",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 2, efficiency of a drive as power out over power in",
      standing: "derived here",
    },
  ],
  compute: ({ W_c, eta_b }) => W_c / eta_b,
});
