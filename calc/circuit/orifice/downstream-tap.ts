import { explicit } from "../../relation/relation.ts";

/**
 * Distance of the downstream tap behind a plate over the height of the dam that the plate is.
 *
 * @example downstreamTap.compute({ L_2: 0.47, beta_d: 0.6 }) // 2.35
 */
export const downstreamTap = explicit({
  id: "circuit/orifice/downstream-tap",
  title: "Orifice coefficient, downstream tap",
  inputs: {
    L_2: { symbol: "L_2", kind: "ratio" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "M_2", kind: "ratio" },
  expression: "2 * L_2 / (1 - beta_d)",
  sources: [
    {
      key: "iso-5167-2",
      where: "Reader-Harris/Gallagher equation, the quantity M'2",
      standing: "from memory",
    },
  ],
  compute: ({ L_2, beta_d }) => (2 * L_2) / (1 - beta_d),
});
