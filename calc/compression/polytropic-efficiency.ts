import { explicit } from "../relation/relation.ts";

/**
 * Efficiency of every small part of the compression, from the temperature parts of the entropy at both ends, J/(kg K).
 *
 * @example polytropicEfficiency.compute({ R_m: 287.043, r: 2.2, s_in: 88.0, s_out: 383.2 }) // 0.7667
 */
export const polytropicEfficiency = explicit({
  id: "compression/polytropic-efficiency",
  title: "Polytropic efficiency",
  inputs: {
    R_m: { symbol: "R_m", kind: "specificHeat" },
    r: { symbol: "r", kind: "ratio" },
    s_in: { symbol: "s_in", kind: "specificHeat" },
    s_out: { symbol: "s_out", kind: "specificHeat" },
  },
  result: { symbol: "eta_p", kind: "fraction" },
  expression: "R_m * log(r) / (s_out - s_in)",
  sources: [{ key: "dixon-hall", where: "chapter 1, efficiencies of compressors", standing: "from memory" }],
  compute: ({ R_m, r, s_in, s_out }) => (R_m * Math.log(r)) / (s_out - s_in),
});
