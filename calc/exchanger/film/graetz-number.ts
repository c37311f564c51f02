import { explicit } from "../../relation/relation.ts";

/**
 * Graetz number of a passage of length L and hydraulic diameter D_h, both in m.
 *
 * @example graetzNumber.compute({ Re: 1000, Pr: 5, D_h: 0.005, L: 0.5 }) // 50.00
 */
export const graetzNumber = explicit({
  id: "exchanger/film/graetz-number",
  title: "Graetz number",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    Pr: { symbol: "Pr", kind: "ratio" },
    D_h: { symbol: "D_h", kind: "length" },
    L: { symbol: "L", kind: "length" },
  },
  result: { symbol: "Gz", kind: "ratio" },
  expression: "Re * Pr * D_h / L",

  sources: [{ key: "shah-london-1978", where: "thermal entrance length", standing: "from memory" }],

  compute: ({ Re, Pr, D_h, L }) => (Re * Pr * D_h) / L,
});
