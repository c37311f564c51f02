import { explicit } from "../../relation/relation.ts";

/**
 * Area in m² of N_ch passages side by side, each of A_ch m².
 *
 * @example passagesArea.compute({ N_ch: 15, A_ch: 0.0002 }) // 0.003 m²
 */
export const passagesArea = explicit({
  id: "exchanger/film/passages-area",
  title: "Area of all passages of a pass",
  inputs: {
    N_ch: { symbol: "N_ch", kind: "ratio" },
    A_ch: { symbol: "A_ch", kind: "area" },
  },
  result: { symbol: "A", kind: "area" },
  expression: "N_ch * A_ch",

  sources: [{ key: "shah-sekulic-2003", where: "chapter 8, free-flow area", standing: "derived here" }],

  compute: ({ N_ch, A_ch }) => N_ch * A_ch,
});
