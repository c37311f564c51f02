import { explicit } from "../relation/relation.ts";

/**
 * Volume flow in m³/s of m kg/s of a liquid with the density rho in kg/m³.
 *
 * @example volumeFlow.compute({ m: 0.9, rho: 997.77 }) // 0.000902 m³/s
 */
export const volumeFlow = explicit({
  id: "fluids/volume-flow",
  title: "Volume flow of a liquid",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "V_w", kind: "liquidFlow" },
  expression: "m / rho",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "from memory" },
  ],
  compute: ({ m, rho }) => m / rho,
});
