import { explicit } from "../relation/relation.ts";

/**
 * Heat capacity in J/(kg K) that carries a stream from h_in to h_out J/kg while it goes from T_in to T_out K: the mean that
 * makes the formulas of exchangers, which know one heat capacity, give the true duty. T_out differs from T_in.
 *
 * @example meanHeatCapacity.compute({ h_in: 161100, h_out: 58700, T_in: 433.15, T_out: 331.93 }) // 1011.7 J/(kg K)
 */
export const meanHeatCapacity = explicit({
  id: "exchanger/mean-heat-capacity",
  title: "Mean heat capacity between inlet and outlet",
  inputs: {
    h_in: { symbol: "h_in", kind: "specificEnergy" },
    h_out: { symbol: "h_out", kind: "specificEnergy" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "c_m", kind: "specificHeat" },
  expression: "(h_in - h_out) / (T_in - T_out)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 3, mean of the heat capacity over a change of state",
      standing: "derived here",
    },
  ],
  compute: ({ h_in, h_out, T_in, T_out }) => (h_in - h_out) / (T_in - T_out),
});
