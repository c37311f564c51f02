import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * What is added to the discharge coefficient in a pipe whose bore d_l, in m, is below 71.12 mm.
 *
 * @example smallPipeTerm.compute({ beta_d: 0.6, d_l: 0.0525 }) // 0.0012096
 */
export const smallPipeTerm = explicit({
  id: "circuit/orifice/small-pipe-term",
  title: "Orifice coefficient, small pipes",
  inputs: {
    beta_d: { symbol: "beta_d", kind: "ratio" },
    d_l: { symbol: "d_l", kind: "length" },
  },
  result: { symbol: "Delta_C_D", kind: "ratio" },
  expression: "0.011 * (0.75 - beta_d) * max(0, 2.8 - d_l / l_in)",
  sources: [
    {
      key: "iso-5167-2",
      where: "Reader-Harris/Gallagher equation, term for pipes below 71.12 mm",
      standing: "from memory",
    },
  ],
  compute: ({ beta_d, d_l }) => 0.011 * (0.75 - beta_d) * Math.max(0, 2.8 - d_l / constants.l_in.value),
});
