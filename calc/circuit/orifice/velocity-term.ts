import { explicit } from "../../relation/relation.ts";

/**
 * What the discharge coefficient of an orifice plate takes from the Reynolds number beside it.
 *
 * @example velocityTerm.compute({ beta_d: 0.6, Re: 1e5 }) // 0.176
 */
export const velocityTerm = explicit({
  id: "circuit/orifice/velocity-term",
  title: "Orifice coefficient, Reynolds term",
  inputs: {
    beta_d: { symbol: "beta_d", kind: "ratio" },
    Re: { symbol: "Re", kind: "ratio" },
  },
  result: { symbol: "A_Re", kind: "ratio" },
  expression: "(19000 * beta_d / Re)^0.8",
  sources: [
    { key: "iso-5167-2", where: "Reader-Harris/Gallagher equation, the quantity A", standing: "from memory" },
  ],
  compute: ({ beta_d, Re }) => ((19000 * beta_d) / Re) ** 0.8,
});
