import { explicit } from "../relation/relation.ts";

/**
 * Brake thermal efficiency: brake power in W over the fuel flow in kg/s times its lower heating value in J/kg.
 *
 * @example brakeEfficiency.compute({ W_e: 235e3, m_f: 0.0195833, LHV: 42.8e6 }) // 0.2804
 */
export const brakeEfficiency = explicit({
  id: "engine/brake-efficiency",
  title: "Brake thermal efficiency",
  inputs: {
    W_e: { symbol: "W_e", kind: "power" },
    m_f: { symbol: "m_f", kind: "massFlow" },
    LHV: { symbol: "LHV", kind: "specificEnergy" },
  },
  result: { symbol: "eta_e", kind: "fraction" },
  expression: "W_e / (m_f * LHV)",
  sources: [{ key: "heywood", where: "chapter 2, fuel conversion efficiency", standing: "from memory" }],
  compute: ({ W_e, m_f, LHV }) => W_e / (m_f * LHV),
});
