import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa that has to be added to a cooler, so that the air meets the loss of the cooler that it stands in for. Negative
 * where it has too much already.
 *
 * @example missingLoss.compute({ Delta_p_t: 13200, Delta_p: 774 }) // 12426 Pa
 */
export const missingLoss = explicit({
  id: "exchanger/missing-loss",
  title: "Pressure loss that is missing",
  inputs: {
    Delta_p_t: { symbol: "Delta_p_t", kind: "pressureDifference" },
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_add", kind: "pressureDifference" },
  expression: "Delta_p_t - Delta_p",
  sources: [{ key: "moran-shapiro", where: "chapter 4, flows in series", standing: "derived here" }],
  compute: ({ Delta_p_t, Delta_p }) => Delta_p_t - Delta_p,
});
