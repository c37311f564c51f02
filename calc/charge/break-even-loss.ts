import { explicit } from "../relation/relation.ts";

/**
 * Loss of a cooler, Pa, at which the air behind it is exactly as dense as before it: pressure before it in Pa absolute,
 * temperatures in K, and the gas constants, which differ when water has condensed. Below zero where the cooler heats.
 *
 * @example breakEvenLoss.compute({ p_in: 220437, T_in: 405.573, T_out: 321.783, R_m_in: 287.043, R_m_out: 287.043 }) // 45 542 Pa
 */
export const breakEvenLoss = explicit({
  id: "charge/break-even-loss",
  title: "Break-even loss",
  inputs: {
    p_in: { symbol: "p_in", kind: "pressure" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
    R_m_in: { symbol: "R_m_in", kind: "specificHeat" },
    R_m_out: { symbol: "R_m_out", kind: "specificHeat" },
  },
  result: { symbol: "Delta_p_be", kind: "pressureDifference" },
  expression: "p_in * (1 - (T_out / T_in) * (R_m_out / R_m_in))",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "derived here" }],
  compute: ({ p_in, T_in, T_out, R_m_in, R_m_out }) => p_in * (1 - (T_out / T_in) * (R_m_out / R_m_in)),
});
