import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s of a liquid with the mean heat capacity c_m in J/(kg K) that takes up C in W/K: with the same C as another liquid it warms by
 * as much at the same duty.
 *
 * @example flowForCapacityRate.compute({ C: 3600, c_m: 4180 }) // 0.8612 kg/s
 */
export const flowForCapacityRate = explicit({
  id: "exchanger/flow-for-capacity-rate",
  title: "Flow with a heat-capacity rate",
  inputs: {
    C: { symbol: "C", kind: "capacityRate" },
    c_m: { symbol: "c_m", kind: "specificHeat" },
  },
  result: { symbol: "m", kind: "massFlow" },
  expression: "C / c_m",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, heat-capacity rate", standing: "from memory" }],
  compute: ({ C, c_m }) => C / c_m,
});
