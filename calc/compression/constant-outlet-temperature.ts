import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K after a compressor of isentropic efficiency eta_s, with one heat capacity throughout.
 *
 * @example constantOutletTemperature.compute({ T_in: 298.15, T_s: 373.5, eta_s: 0.74 }) // 400 K
 */
export const constantOutletTemperature = explicit({
  id: "compression/constant-outlet-temperature",
  title: "Temperature after the compressor, constant heat capacity",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    T_s: { symbol: "T_s", kind: "temperature" },
    eta_s: { symbol: "eta_s", kind: "fraction" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  expression: "T_in + (T_s - T_in) / eta_s",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ T_in, T_s, eta_s }) => T_in + (T_s - T_in) / eta_s,
});
