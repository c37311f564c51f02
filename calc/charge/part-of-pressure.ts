import { explicit } from "../relation/relation.ts";

/**
 * Part of the density gained that belongs to a change of pressure, both in Pa absolute.
 * The logarithmic mean L_D makes the parts of all changes add up to the gain.
 *
 * @example partOfPressure.compute({ L_D: 1.44232, p_out: 220437, p_in: 98000 }) // 1.1692
 */
export const partOfPressure = explicit({
  id: "charge/part-of-pressure",
  title: "Part of a change of pressure",
  inputs: {
    L_D: { symbol: "L_D", kind: "ratio" },
    p_out: { symbol: "p_out", kind: "pressure" },
    p_in: { symbol: "p_in", kind: "pressure" },
  },
  result: { symbol: "Delta_D", kind: "ratio" },
  expression: "L_D * log(p_out / p_in)",
  sources: [
    {
      key: "ang-2005",
      where: "additive decomposition with logarithmic mean weights",
      standing: "from memory",
    },
  ],
  compute: ({ L_D, p_out, p_in }) => L_D * Math.log(p_out / p_in),
});
