import { explicit } from "../relation/relation.ts";

/**
 * Pressure ratio of a compressor; both pressures absolute, in Pa.
 *
 * @example pressureRatio.compute({ p_out: 217.8e3, p_in: 99e3 }) // 2.2
 */
export const pressureRatio = explicit({
  id: "compression/pressure-ratio",
  title: "Pressure ratio",
  inputs: {
    p_out: { symbol: "p_out", kind: "pressure" },
    p_in: { symbol: "p_in", kind: "pressure" },
  },
  result: { symbol: "r", kind: "ratio" },
  expression: "p_out / p_in",
  sources: [
    { key: "moran-shapiro", where: "chapter 9, pressure ratio of a compressor", standing: "from memory" },
  ],
  compute: ({ p_out, p_in }) => p_out / p_in,
});
