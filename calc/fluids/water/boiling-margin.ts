import { explicit } from "../../relation/relation.ts";

/**
 * How far water is from boiling, K: its boiling temperature at its own pressure less its temperature, both in K. Below
 * zero it would boil.
 *
 * @example boilingMargin.compute({ T_sat: 406.675, T: 363.15 }) // 43.525 K
 */
export const boilingMargin = explicit({
  id: "fluids/water/boiling-margin",
  title: "Margin to boiling",
  inputs: {
    T_sat: { symbol: "T_sat", kind: "temperature" },
    T: { symbol: "T", kind: "temperature" },
  },
  result: { symbol: "Delta_T_sat", kind: "temperatureDifference" },
  expression: "T_sat - T",
  sources: [{ key: "iapws-if97", where: "region 4, difference of temperatures", standing: "derived here" }],
  compute: ({ T_sat, T }) => T_sat - T,
});
