import { explicit } from "../relation/relation.ts";

/**
 * Volume of a kilogram, m³/kg.
 *
 * @example specificVolume.compute({ rho: 1.25 }) // 0.8 m³/kg
 */
export const specificVolume = explicit({
  id: "fluids/specific-volume",
  title: "Specific volume",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "v", kind: "specificVolume" },
  expression: "1 / rho",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  compute: ({ rho }) => 1 / rho,
});
