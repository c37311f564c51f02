import { explicit } from "../relation/relation.ts";

/**
 * Heat in W that a stream of m kg/s takes up per kelvin, with the mean heat capacity c_m in J/(kg K).
 *
 * @example capacityRate.compute({ m: 0.35, c_m: 1011.7 }) // 354.1 W/K
 */
export const capacityRate = explicit({
  id: "exchanger/capacity-rate",
  title: "Heat-capacity rate of a stream",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    c_m: { symbol: "c_m", kind: "specificHeat" },
  },
  result: { symbol: "C", kind: "capacityRate" },
  expression: "m * c_m",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, heat-capacity rate", standing: "from memory" }],
  compute: ({ m, c_m }) => m * c_m,
});
