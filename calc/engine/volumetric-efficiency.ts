import { explicit } from "../relation/relation.ts";

/**
 * Volumetric efficiency that an air flow m_a in kg/s takes: the flow over what the displacement in m³ would draw at this speed
 * in rev/s, with air of the density rho in kg/m³ to which the efficiency refers.
 *
 * @example volumetricEfficiency.compute({ m_a: 0.154, n_R: 2, rho: 2.2834, V_d: 4.4e-3, n: 33.333 }) // 0.920
 */
export const volumetricEfficiency = explicit({
  id: "engine/volumetric-efficiency",
  title: "Volumetric efficiency from the air flow",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    n_R: { symbol: "n_R", kind: "ratio" },
    rho: { symbol: "rho", kind: "density" },
    V_d: { symbol: "V_d", kind: "volume" },
    n: { symbol: "n", kind: "rotationalSpeed" },
  },
  result: { symbol: "eta_v", kind: "fraction" },
  expression: "m_a * n_R / (rho * V_d * n)",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ m_a, n_R, rho, V_d, n }) => (m_a * n_R) / (rho * V_d * n),
});
