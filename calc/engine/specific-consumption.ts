import { explicit } from "../relation/relation.ts";

/**
 * Brake specific fuel consumption in kg/J from the fuel flow in kg/s and the brake power in W.
 *
 * @example specificConsumption.compute({ m_f: 0.0195833, W_e: 235e3 }) // 8.333e-8 kg/J
 */
export const specificConsumption = explicit({
  id: "engine/specific-consumption",
  title: "Specific fuel consumption",
  inputs: {
    m_f: { symbol: "m_f", kind: "massFlow" },
    W_e: { symbol: "W_e", kind: "power" },
  },
  result: { symbol: "b", kind: "specificFuel" },
  expression: "m_f / W_e",
  sources: [{ key: "heywood", where: "chapter 2, specific fuel consumption", standing: "from memory" }],
  compute: ({ m_f, W_e }) => m_f / W_e,
});
