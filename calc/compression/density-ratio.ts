import { explicit } from "../relation/relation.ts";

/**
 * How many times denser the air is at the end than at the start: pressures in Pa absolute, temperatures in K, and the gas
 * constants, which differ when water has condensed.
 *
 * @example densityRatio.compute({ p_in: 99e3, p_out: 211.8e3, T_in: 298.15, T_out: 323.15, R_m_in: 287.043, R_m_out: 287.043 }) // 1.974
 */
export const densityRatio = explicit({
  id: "compression/density-ratio",
  title: "Density ratio",
  inputs: {
    p_in: { symbol: "p_in", kind: "pressure" },
    p_out: { symbol: "p_out", kind: "pressure" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
    R_m_in: { symbol: "R_m_in", kind: "specificHeat" },
    R_m_out: { symbol: "R_m_out", kind: "specificHeat" },
  },
  result: { symbol: "D_rho", kind: "ratio" },
  expression: "(p_out / p_in) * (T_in / T_out) * (R_m_in / R_m_out)",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  compute: ({ p_in, p_out, T_in, T_out, R_m_in, R_m_out }) =>
    (p_out / p_in) * (T_in / T_out) * (R_m_in / R_m_out),
});
