import { explicit } from "../relation/relation.ts";

/**
 * Fuel flow in kg/s from brake power in W and brake specific fuel consumption in kg/J.
 *
 * @example fuelFlow.compute({ b: 8.3333e-8, W_e: 235e3 }) // 0.01958 kg/s
 */
export const fuelFlow = explicit({
  id: "engine/fuel-flow",
  title: "Fuel flow from power",
  inputs: {
    b: { symbol: "b", kind: "specificFuel" },
    W_e: { symbol: "W_e", kind: "power" },
  },
  result: { symbol: "m_f", kind: "massFlow" },
  expression: "b * W_e",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ b, W_e }) => b * W_e,
});
