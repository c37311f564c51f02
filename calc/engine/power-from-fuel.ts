import { explicit } from "../relation/relation.ts";

/**
 * Brake power in W of a fuel flow in kg/s at the brake specific fuel consumption b in kg/J.
 *
 * @example powerFromFuel.compute({ m_f: 0.0195833, b: 300 / 3.6e9 }) // 235 000 W
 */
export const powerFromFuel = explicit({
  id: "engine/power-from-fuel",
  title: "Power from fuel",
  inputs: {
    m_f: { symbol: "m_f", kind: "massFlow" },
    b: { symbol: "b", kind: "specificFuel" },
  },
  result: { symbol: "W_e", kind: "power" },
  expression: "m_f / b",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ m_f, b }) => m_f / b,
});
