import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K after ideal compression with one heat-capacity ratio throughout.
 *
 * @example constantIsentropicTemperature.compute({ T_in: 298.15, r: 2.2, kappa: 1.4 }) // 373.5 K
 */
export const constantIsentropicTemperature = explicit({
  id: "compression/constant-isentropic-temperature",
  title: "Temperature after ideal compression, constant heat capacity",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    r: { symbol: "r", kind: "ratio" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "T_s", kind: "temperature" },
  expression: "T_in * r^((kappa - 1) / kappa)",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ T_in, r, kappa }) => T_in * r ** ((kappa - 1) / kappa),
});
