import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a second reading over that of the first, on the same cooler: losses in Pa, mean densities in kg/m³, flows
 * in kg/s.
 *
 * @example coefficientRatio.compute({ rho_II: 1.18, Delta_p_II: 3500, rho_I: 1.2, Delta_p_I: 500, m_I: 0.1, m_II: 0.3 }) // 0.7648
 */
export const coefficientRatio = explicit({
  id: "flow/coefficient-ratio",
  title: "Loss coefficients of two readings",
  inputs: {
    rho_II: { symbol: "rho_II", kind: "density" },
    Delta_p_II: { symbol: "Delta_p_II", kind: "pressureDifference" },
    rho_I: { symbol: "rho_I", kind: "density" },
    Delta_p_I: { symbol: "Delta_p_I", kind: "pressureDifference" },
    m_I: { symbol: "m_I", kind: "massFlow" },
    m_II: { symbol: "m_II", kind: "massFlow" },
  },
  result: { symbol: "X_K", kind: "ratio" },
  expression: "rho_II * Delta_p_II / (rho_I * Delta_p_I) * (m_I / m_II)^2",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 6, pressure drop", standing: "derived here" }],
  compute: ({ rho_II, Delta_p_II, rho_I, Delta_p_I, m_I, m_II }) =>
    ((rho_II * Delta_p_II) / (rho_I * Delta_p_I)) * (m_I / m_II) ** 2,
});
