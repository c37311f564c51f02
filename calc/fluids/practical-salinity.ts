import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

/**
 * Practical salinity, as conductivity meters read it, of seawater of the reference composition and of absolute salinity S in
 * kg/kg.
 *
 * @example practicalSalinity.compute({ S: 0.03516504 }) // 35.000
 */
export const practicalSalinity = explicit({
  id: "fluids/practical-salinity",
  title: "Practical from absolute salinity",
  inputs: { S: { symbol: "S", kind: "fraction" } },
  result: { symbol: "S_P", kind: "ratio" },
  expression: "1000 * S / r_S",
  sources: [{ key: "teos-10", where: "reference-composition salinity", standing: "open reference read" }],
  compute: ({ S }) => (1000 * S) / constants.r_S.value,
});
