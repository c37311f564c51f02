import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s that carries Q in W away with a change of its temperature of Delta_T in K, with the mean heat capacity c_m in J/(kg K).
 *
 * @example flowForDuty.compute({ Q: 44796, c_m: 4182, Delta_T: 11.906 }) // 0.8997 kg/s
 */
export const flowForDuty = explicit({
  id: "exchanger/flow-for-duty",
  title: "Flow for a duty and a change of temperature",
  inputs: {
    Q: { symbol: "Q", kind: "heatFlow" },
    c_m: { symbol: "c_m", kind: "specificHeat" },
    Delta_T: { symbol: "Delta_T", kind: "temperatureDifference" },
  },
  result: { symbol: "m", kind: "massFlow" },
  expression: "Q / (c_m * Delta_T)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ Q, c_m, Delta_T }) => Q / (c_m * Delta_T),
});
