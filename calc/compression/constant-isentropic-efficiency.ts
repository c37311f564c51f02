import { explicit } from "../relation/relation.ts";

/**
 * Ideal over real rise of temperature, all in K.
 *
 * @example constantIsentropicEfficiency.compute({ T_in: 298.15, T_s: 373.5, T_out: 400 }) // 0.74
 */
export const constantIsentropicEfficiency = explicit({
  id: "compression/constant-isentropic-efficiency",
  title: "Isentropic efficiency, constant heat capacity",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    T_s: { symbol: "T_s", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "eta_s", kind: "fraction" },
  expression: "(T_s - T_in) / (T_out - T_in)",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ T_in, T_s, T_out }) => (T_s - T_in) / (T_out - T_in),
});
