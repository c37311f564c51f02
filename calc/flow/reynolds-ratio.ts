import { explicit } from "../relation/relation.ts";

/**
 * Reynolds number of a second reading over that of the first, through the same passages: flows in kg/s and viscosities in Pa s.
 *
 * @example reynoldsRatio.compute({ m_II: 0.3, mu_I: 18e-6, m_I: 0.1, mu_II: 22e-6 }) // 2.4545
 */
export const reynoldsRatio = explicit({
  id: "flow/reynolds-ratio",
  title: "Reynolds numbers of two readings",
  inputs: {
    m_II: { symbol: "m_II", kind: "massFlow" },
    mu_I: { symbol: "mu_I", kind: "viscosity" },
    m_I: { symbol: "m_I", kind: "massFlow" },
    mu_II: { symbol: "mu_II", kind: "viscosity" },
  },
  result: { symbol: "X_Re", kind: "ratio" },
  expression: "m_II * mu_I / (m_I * mu_II)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 7, Reynolds number", standing: "derived here" }],
  compute: ({ m_II, mu_I, m_I, mu_II }) => (m_II * mu_I) / (m_I * mu_II),
});
