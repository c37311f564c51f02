import { explicit } from "../relation/relation.ts";

/**
 * Exponent of a pressure loss over the flow from two readings: losses in Pa, mean densities in kg/m³, flows in kg/s. The
 * flows have to differ. Losses times densities are compared, so that the density does not pass for the flow.
 *
 * @example measuredExponent.compute({ Delta_p_I: 500, rho_I: 1.2, Delta_p_II: 3500, rho_II: 1.18, m_I: 0.1, m_II: 0.3 }) // 1.756
 */
export const measuredExponent = explicit({
  id: "flow/measured-exponent",
  title: "Exponent from two readings",
  inputs: {
    Delta_p_II: { symbol: "Delta_p_II", kind: "pressureDifference" },
    rho_II: { symbol: "rho_II", kind: "density" },
    Delta_p_I: { symbol: "Delta_p_I", kind: "pressureDifference" },
    rho_I: { symbol: "rho_I", kind: "density" },
    m_II: { symbol: "m_II", kind: "massFlow" },
    m_I: { symbol: "m_I", kind: "massFlow" },
  },
  result: { symbol: "n_p", kind: "ratio" },
  expression: "log(rho_II * Delta_p_II / (rho_I * Delta_p_I)) / log(m_II / m_I)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 6, pressure drop as a power of the flow",
      standing: "derived here",
    },
  ],
  compute: ({ Delta_p_II, rho_II, Delta_p_I, rho_I, m_II, m_I }) =>
    Math.log((rho_II * Delta_p_II) / (rho_I * Delta_p_I)) / Math.log(m_II / m_I),
});
