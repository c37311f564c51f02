import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a part that loses as much as so many bores of straight, fully rough pipe.
 *
 * @example lossOfLength.compute({ f_T: 0.0163, l_eq: 14 }) // 0.2282
 */
export const lossOfLength = explicit({
  id: "flow/loss-of-length",
  title: "Loss coefficient of an equivalent length",
  inputs: {
    f_T: { symbol: "f_T", kind: "ratio" },
    l_eq: { symbol: "l_eq", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "f_T * l_eq",
  sources: [
    { key: "fluids", where: "fittings, equivalent lengths", standing: "open reference read" },
    { key: "crane-tp-410", where: "equivalent length", standing: "from memory" },
  ],
  compute: ({ f_T, l_eq }) => f_T * l_eq,
});
