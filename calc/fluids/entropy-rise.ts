import { explicit } from "../relation/relation.ts";

/**
 * By how much the entropy of air at one state lies above that at another, J/(kg K): from the temperature parts of both in
 * J/(kg K) and the pressures in Pa absolute. Ideal gas of one composition.
 *
 * @example entropyRise.compute({ s_in: 88.0, s_out: 383.2, R_m: 287.043, p_in: 99e3, p_out: 217.8e3 }) // 68.88 J/(kg K)
 */
export const entropyRise = explicit({
  id: "fluids/entropy-rise",
  title: "Rise of entropy",
  inputs: {
    s_in: { symbol: "s_in", kind: "specificHeat" },
    s_out: { symbol: "s_out", kind: "specificHeat" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    p_in: { symbol: "p_in", kind: "pressure" },
    p_out: { symbol: "p_out", kind: "pressure" },
  },
  result: { symbol: "Delta_s", kind: "specificHeat" },
  expression: "s_out - s_in - R_m * log(p_out / p_in)",
  sources: [
    { key: "moran-shapiro", where: "chapter 6, entropy change of an ideal gas", standing: "from memory" },
  ],
  compute: ({ s_in, s_out, R_m, p_in, p_out }) => s_out - s_in - R_m * Math.log(p_out / p_in),
});
