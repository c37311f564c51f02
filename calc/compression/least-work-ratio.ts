import { explicit } from "../relation/relation.ts";

/**
 * Ratio of the first of two compressors that needs least work, where heat capacity is constant and the cooler between them
 * brings the air to T_3 in K at any split and costs no pressure: r_t is the ratio of both together. The ratio itself is not
 * held between 1 and r_t.
 *
 * Derived by setting the slope of the total work to zero.
 *
 * @example leastWorkRatio.compute({ r_t: 4.27, eta_s_1: 0.6, eta_s2: 0.76, T_1: 298.15, T_3: 303.15, kappa: 1.4 }) // 1.40668
 */
export const leastWorkRatio = explicit({
  id: "compression/least-work-ratio",
  title: "Split of least work with perfect cooling between the stages",
  inputs: {
    r_t: { symbol: "r_t", kind: "ratio" },
    eta_s_1: { symbol: "eta_s_1", kind: "fraction" },
    eta_s2: { symbol: "eta_s_2", kind: "fraction" },
    T_1: { symbol: "T_1", kind: "temperature" },
    T_3: { symbol: "T_3", kind: "temperature" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "r_1", kind: "ratio" },
  expression: "sqrt(r_t) * ((eta_s_1 * T_3) / (eta_s2 * T_1))^(kappa / (2 * (kappa - 1)))",
  sources: [{ key: "moran-shapiro", where: "chapter 9, compression in stages", standing: "derived here" }],
  compute: ({ r_t, eta_s_1, eta_s2, T_1, T_3, kappa }) =>
    Math.sqrt(r_t) * ((eta_s_1 * T_3) / (eta_s2 * T_1)) ** (kappa / (2 * (kappa - 1))),
});
