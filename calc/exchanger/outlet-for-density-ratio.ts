import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K at which dry or moist air has to leave a cooler, so that it is D_rho times as dense as it entered: pressures in
 * Pa absolute before and behind, T_in in K. Nothing may condense between.
 *
 * @example outletForDensityRatio.compute({ T_in: 458.15, p_in: 260e3, p_out: 254e3, D_rho: 1.35 }) // 331.54 K
 */
export const outletForDensityRatio = explicit({
  id: "exchanger/outlet-for-density-ratio",
  title: "Outlet temperature for a density ratio across the cooler",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    p_in: { symbol: "p_in", kind: "pressure" },
    p_out: { symbol: "p_out", kind: "pressure" },
    D_rho: { symbol: "D_rho", kind: "ratio" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  expression: "T_in * p_out / (p_in * D_rho)",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  compute: ({ T_in, p_in, p_out, D_rho }) => (T_in * p_out) / (p_in * D_rho),
});
