import { explicit } from "../relation/relation.ts";

/**
 * Outlet pressure in Pa absolute from the pressure ratio and the inlet pressure in Pa absolute.
 *
 * @example outletPressure.compute({ r: 2.2, p_in: 99e3 }) // 217 800 Pa
 */
export const outletPressure = explicit({
  id: "compression/outlet-pressure",
  title: "Pressure after the compressor",
  inputs: {
    r: { symbol: "r", kind: "ratio" },
    p_in: { symbol: "p_in", kind: "pressure" },
  },
  result: { symbol: "p_out", kind: "pressure" },
  expression: "r * p_in",
  sources: [
    { key: "moran-shapiro", where: "chapter 9, pressure ratio of a compressor", standing: "from memory" },
  ],
  compute: ({ r, p_in }) => r * p_in,
});
