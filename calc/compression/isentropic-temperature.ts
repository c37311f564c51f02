import { temperatureAtEntropy } from "../fluids/moist-air.ts";
import { implicit } from "../relation/relation.ts";

/**
 * Temperature in K after compression without loss or cooling: the temperature part of the entropy rises by R_m log r.
 * s_in in J/(kg K) is that of the inlet, w in kg/kg.
 *
 * @example isentropicTemperature.compute({ s_in: temperatureEntropy.compute({ T: 300, w: 0 }), R_m: 287.043, r: 8, w: 0 }) // 539.6 K
 */
export const isentropicTemperature = implicit({
  id: "compression/isentropic-temperature",
  title: "Temperature after ideal compression",
  inputs: {
    s_in: { symbol: "s_in", kind: "specificHeat" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    r: { symbol: "r", kind: "ratio" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "T_s", kind: "temperature" },
  residual: "s_o(T_s, w) - s_in - R_m * log(r)",
  unknown: "T_s",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ s_in, R_m, r, w }) => temperatureAtEntropy(s_in + R_m * Math.log(r), w),
});
