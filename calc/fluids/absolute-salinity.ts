import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

/**
 * Absolute salinity in kg/kg of seawater of the reference composition, from its practical salinity.
 *
 * @example absoluteSalinity.compute({ S_P: 35 }) // 0.035165 kg/kg
 */
export const absoluteSalinity = explicit({
  id: "fluids/absolute-salinity",
  title: "Absolute from practical salinity",
  inputs: { S_P: { symbol: "S_P", kind: "ratio" } },
  result: { symbol: "S", kind: "fraction" },
  expression: "r_S * S_P / 1000",
  sources: [{ key: "teos-10", where: "reference-composition salinity", standing: "open reference read" }],
  compute: ({ S_P }) => (constants.r_S.value * S_P) / 1000,
});
