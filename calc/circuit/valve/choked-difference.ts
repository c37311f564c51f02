import { explicit } from "../../relation/relation.ts";

/**
 * Pressure difference in Pa from which on a valve passes no more liquid, however low the pressure behind it: it boils in the jet.
 * Without reducers F_LP is F_L and F_P is 1. Pressures in Pa absolute.
 *
 * @example chokedDifference.compute({ F_LP: 0.6, F_P: 1, p_in: 680e3, F_F: 0.94424, p_v: 70100 }) // 2.2097e5 Pa
 */
export const chokedDifference = explicit({
  id: "circuit/valve/choked-difference",
  title: "Pressure difference that chokes a valve",
  inputs: {
    F_LP: { symbol: "F_LP", kind: "ratio" },
    F_P: { symbol: "F_P", kind: "ratio" },
    p_in: { symbol: "p_in", kind: "pressure" },
    F_F: { symbol: "F_F", kind: "ratio" },
    p_v: { symbol: "p_v", kind: "pressure" },
  },
  result: { symbol: "Delta_p_ch", kind: "pressureDifference" },
  expression: "(F_LP / F_P)^2 * (p_in - F_F * p_v)",
  sources: [{ key: "iec-60534-2-1", where: "choked flow of a liquid", standing: "from memory" }],
  compute: ({ F_LP, F_P, p_in, F_F, p_v }) => (F_LP / F_P) ** 2 * (p_in - F_F * p_v),
});
