import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa absolute after a filter, a duct or a cooler that costs Delta_p in Pa.
 *
 * @example pressureAfterLoss.compute({ p_in: 217.8e3, Delta_p: 6e3 }) // 211 800 Pa
 */
export const pressureAfterLoss = explicit({
  id: "flow/pressure-after-loss",
  title: "Pressure after a loss",
  inputs: {
    p_in: { symbol: "p_in", kind: "pressure" },
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
  },
  result: { symbol: "p_out", kind: "pressure" },
  expression: "p_in - Delta_p",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 6, pressure drop", standing: "from memory" }],
  compute: ({ p_in, Delta_p }) => p_in - Delta_p,
});
