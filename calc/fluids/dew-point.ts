import { implicit } from "../relation/relation.ts";
import { saturationTemperature } from "./saturation-temperature.ts";

/**
 * Dew point in K (frost point below 273.16 K): the temperature at which a vapour pressure `p_v`, Pa, saturates air with
 * the enhancement factor `f_e` taken at that temperature. With f_e = 1 it is the ideal-gas dew point.
 *
 * @example dewPoint.compute({ p_v: 2339.215, f_e: 1 }) // 293.15 K
 */
export const dewPoint = implicit({
  id: "fluids/dew-point",
  title: "Dew point from the vapour pressure",
  inputs: { p_v: { symbol: "p_v", kind: "pressure" }, f_e: { symbol: "f_e", kind: "ratio" } },
  result: { symbol: "T_dp", kind: "temperature" },
  residual: "f_e * p_ws(T_dp) - p_v",
  unknown: "T_dp",
  sources: [{ key: "ashrae-2017", where: "chapter 1, definition of the dew point", standing: "from memory" }],
  compute: ({ p_v, f_e }) => saturationTemperature(p_v / f_e),
});
