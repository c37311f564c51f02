import { explicit } from "../../relation/relation.ts";

/**
 * Time in s in which a flow of m kg/s brings as much as a volume V_ch in m³ holds at the density rho in kg/m³: with a steady inflow and
 * an outflow that follows the density, the time constant of the pressure in it.
 *
 * @example fillTime.compute({ rho: 2.7, V_ch: 0.012, m: 0.35 }) // 0.0926 s
 */
export const fillTime = explicit({
  id: "exchanger/response/fill-time",
  title: "Time in which a volume fills",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    V_ch: { symbol: "V_ch", kind: "volume" },
    m: { symbol: "m", kind: "massFlow" },
  },
  result: { symbol: "t_fill", kind: "duration" },
  expression: "rho * V_ch / m",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "derived here" },
  ],
  compute: ({ rho, V_ch, m }) => (rho * V_ch) / m,
});
