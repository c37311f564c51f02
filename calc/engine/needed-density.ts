import { explicit } from "../relation/relation.ts";

/**
 * Density in kg/m³ that the air must have so that the engine draws in the mass flow m_a, kg/s.
 *
 * @example neededDensity.compute({ m_a: 0.24303, n_R: 2, eta_v: 0.98, V_d: 2e-3, n: 108.33 }) // 2.289 kg/m³
 */
export const neededDensity = explicit({
  id: "engine/needed-density",
  title: "Density needed for an air flow",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    n_R: { symbol: "n_R", kind: "ratio" },
    eta_v: { symbol: "eta_v", kind: "fraction" },
    V_d: { symbol: "V_d", kind: "volume" },
    n: { symbol: "n", kind: "rotationalSpeed" },
  },
  result: { symbol: "rho", kind: "density" },
  expression: "m_a * n_R / (eta_v * V_d * n)",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ m_a, n_R, eta_v, V_d, n }) => (m_a * n_R) / (eta_v * V_d * n),
});
