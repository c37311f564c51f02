import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa that is the part zeta (0 to below 1) of the pressure p_in in Pa absolute before it.
 *
 * @example lossAsPart.compute({ zeta: 0.03, p_in: 200e3 }) // 6000 Pa
 */
export const lossAsPart = explicit({
  id: "flow/loss-as-part",
  title: "Loss as a part of the pressure",
  inputs: {
    zeta: { symbol: "zeta", kind: "fraction" },
    p_in: { symbol: "p_in", kind: "pressure" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "zeta * p_in",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 6, pressure drop", standing: "from memory" }],
  compute: ({ zeta, p_in }) => zeta * p_in,
});
