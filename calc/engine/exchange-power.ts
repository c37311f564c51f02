import { explicit } from "../relation/relation.ts";

/**
 * Power in W that the gas exchange gives to the crankshaft, or takes where it is negative: mean effective pressure in Pa,
 * displacement in m³, speed in rev/s, revolutions per cycle.
 *
 * @example exchangePower.compute({ p_gx: 17400, V_d: 4.4e-3, n: 33.33, n_R: 2 }) // 1276 W
 */
export const exchangePower = explicit({
  id: "engine/exchange-power",
  title: "Power of the gas exchange",
  inputs: {
    p_gx: { symbol: "p_gx", kind: "pressureDifference" },
    V_d: { symbol: "V_d", kind: "volume" },
    n: { symbol: "n", kind: "rotationalSpeed" },
    n_R: { symbol: "n_R", kind: "ratio" },
  },
  result: { symbol: "W_gx", kind: "power" },
  expression: "p_gx * V_d * (n / n_R)",
  sources: [{ key: "heywood", where: "chapter 2, mean effective pressure", standing: "from memory" }],
  compute: ({ p_gx, V_d, n, n_R }) => p_gx * V_d * (n / n_R),
});
