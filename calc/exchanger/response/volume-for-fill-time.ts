import { explicit } from "../../relation/relation.ts";

/**
 * Volume in m³ that a flow of m kg/s fills in t_fill seconds to the density rho in kg/m³.
 *
 * @example volumeForFillTime.compute({ rho: 2.7, t_fill: 0.0926, m: 0.35 }) // 0.0120 m³
 */
export const volumeForFillTime = explicit({
  id: "exchanger/response/volume-for-fill-time",
  title: "Volume that fills in a time",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    t_fill: { symbol: "t_fill", kind: "duration" },
    m: { symbol: "m", kind: "massFlow" },
  },
  result: { symbol: "V_ch", kind: "volume" },
  expression: "m * t_fill / rho",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "derived here" },
  ],
  compute: ({ rho, t_fill, m }) => (m * t_fill) / rho,
});
