import { explicit } from "../relation/relation.ts";

/**
 * Volume flow in m³/s of m kg/s of something with the density rho in kg/m³.
 *
 * @example volumeFlow.compute({ m: 0.9, rho: 997.77 }) // 0.000902 m³/s
 */
export const volumeFlow = explicit({
  id: "fluids/volume-flow",
  title: "Volume flow from a mass flow",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "V_dot", kind: "volumeFlow" },
  expression: "m / rho",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "from memory" },
  ],
  compute: ({ m, rho }) => m / rho,
});
