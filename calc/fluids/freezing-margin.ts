import { explicit } from "../relation/relation.ts";

/**
 * How far a liquid is from freezing, K: its temperature less that at which its first ice forms, both in K.
 *
 * @example freezingMargin.compute({ T: 293.15, T_f: 258.57 }) // 34.58 K
 */
export const freezingMargin = explicit({
  id: "fluids/freezing-margin",
  title: "Margin to freezing",
  inputs: { T: { symbol: "T", kind: "temperature" }, T_f: { symbol: "T_f", kind: "temperature" } },
  result: { symbol: "Delta_T_f", kind: "temperatureDifference" },
  expression: "T - T_f",
  sources: [
    { key: "ashrae-2017", where: "chapter 31, difference of temperatures", standing: "derived here" },
  ],
  compute: ({ T, T_f }) => T - T_f,
});
