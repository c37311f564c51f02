import { explicit } from "../relation/relation.ts";

/**
 * Mean effective pressure in Pa of the gas exchange of a four-stroke engine, by the ideal loop: filled at the pressure of the
 * manifold, emptied at that before the turbine. Above zero it helps the crankshaft, below it costs.
 *
 * @example exchangePressure.compute({ p_m: 211.8e3, p_T: 194.4e3 }) // 17 400 Pa
 */
export const exchangePressure = explicit({
  id: "engine/exchange-pressure",
  title: "Mean effective pressure of the gas exchange",
  inputs: {
    p_m: { symbol: "p_m", kind: "pressure" },
    p_T: { symbol: "p_T", kind: "pressure" },
  },
  result: { symbol: "p_gx", kind: "pressureDifference" },
  expression: "p_m - p_T",
  sources: [
    { key: "heywood", where: "chapter 5, ideal cycles with exchange of the charge", standing: "from memory" },
  ],
  compute: ({ p_m, p_T }) => p_m - p_T,
});
