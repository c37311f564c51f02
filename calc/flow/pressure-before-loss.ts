import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa absolute that has to stand before a cooler or a duct that costs Delta_p in Pa, for p_out behind it.
 *
 * @example pressureBeforeLoss.compute({ p_out: 420e3, Delta_p: 7e3 }) // 427 000 Pa
 */
export const pressureBeforeLoss = explicit({
  id: "flow/pressure-before-loss",
  title: "Pressure before a loss",
  inputs: {
    p_out: { symbol: "p_out", kind: "pressure" },
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
  },
  result: { symbol: "p_in", kind: "pressure" },
  expression: "p_out + Delta_p",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 6, pressure drop", standing: "from memory" }],
  compute: ({ p_out, Delta_p }) => p_out + Delta_p,
});
