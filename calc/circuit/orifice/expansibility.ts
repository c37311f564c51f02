import { explicit } from "../../relation/relation.ts";

/**
 * Expansibility factor of an orifice plate in a gas, 1 in a liquid: pressures before and behind the plate in Pa absolute, taken at the
 * taps; kappa the heat-capacity ratio.
 *
 * @example expansibility.compute({ beta_d: 0.6, p_in: 200e3, p_out: 190e3, kappa: 1.4 }) // 0.98562
 */
export const expansibility = explicit({
  id: "circuit/orifice/expansibility",
  title: "Expansibility at an orifice plate",
  inputs: {
    beta_d: { symbol: "beta_d", kind: "ratio" },
    p_in: { symbol: "p_in", kind: "pressure" },
    p_out: { symbol: "p_out", kind: "pressure" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "epsilon_e", kind: "ratio" },
  expression: "1 - (0.351 + 0.256 * beta_d^4 + 0.93 * beta_d^8) * (1 - (p_out / p_in)^(1 / kappa))",
  sources: [{ key: "iso-5167-2", where: "expansibility factor", standing: "from memory" }],
  compute: ({ beta_d, p_in, p_out, kappa }) =>
    1 - (0.351 + 0.256 * beta_d ** 4 + 0.93 * beta_d ** 8) * (1 - (p_out / p_in) ** (1 / kappa)),
});
