import { temperatureAtEntropy } from "../fluids/moist-air.ts";
import { implicit } from "../relation/relation.ts";

/**
 * Temperature in K after compression in which every small part has the efficiency eta_p (above 0 to 1).
 *
 * @example polytropicTemperature.compute({ s_in: temperatureEntropy.compute({ T: 298.15, w: 0 }), R_m: 287.043, r: 3, eta_p: 0.8, w: 0 }) // 440.4 K
 */
export const polytropicTemperature = implicit({
  id: "compression/polytropic-temperature",
  title: "Temperature after compression of given polytropic efficiency",
  inputs: {
    s_in: { symbol: "s_in", kind: "specificHeat" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    r: { symbol: "r", kind: "ratio" },
    eta_p: { symbol: "eta_p", kind: "fraction" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  residual: "s_o(T_out, w) - s_in - R_m * log(r) / eta_p",
  unknown: "T_out",
  sources: [{ key: "dixon-hall", where: "chapter 1, efficiencies of compressors", standing: "from memory" }],
  compute: ({ s_in, R_m, r, eta_p, w }) => temperatureAtEntropy(s_in + (R_m * Math.log(r)) / eta_p, w),
});
