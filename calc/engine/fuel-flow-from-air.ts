import { explicit } from "../relation/relation.ts";

/**
 * Fuel flow in kg/s that the dry air flow m_da burns at the relative air-fuel ratio lambda.
 *
 * @example fuelFlowFromAir.compute({ m_da: 0.243, lambda: 0.85, AFR_st: 14.6 }) // 0.01958 kg/s
 */
export const fuelFlowFromAir = explicit({
  id: "engine/fuel-flow-from-air",
  title: "Fuel flow from dry air",
  inputs: {
    m_da: { symbol: "m_da", kind: "massFlow" },
    lambda: { symbol: "lambda", kind: "ratio" },
    AFR_st: { symbol: "AFR_st", kind: "ratio" },
  },
  result: { symbol: "m_f", kind: "massFlow" },
  expression: "m_da / (lambda * AFR_st)",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ m_da, lambda, AFR_st }) => m_da / (lambda * AFR_st),
});
