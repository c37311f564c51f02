import { explicit } from "../relation/relation.ts";

/**
 * Static pressure in Pa at the end of a pipe of one bore without heat, from the one at its beginning: speed over that at choking
 * and Mach number at both.
 *
 * @example staticPressureAfterFriction.compute({ p_stat_in: 100e3, chi_in: 0.3257, chi_end: 1, Ma_in: 0.3, Ma_end: 1 }) // 27 633 Pa
 */
export const staticPressureAfterFriction = explicit({
  id: "flow/static-pressure-after-friction",
  title: "Static pressure after friction",
  inputs: {
    p_stat_in: { symbol: "p_stat_in", kind: "pressure" },
    chi_in: { symbol: "chi_in", kind: "ratio" },
    chi_end: { symbol: "chi_end", kind: "ratio" },
    Ma_in: { symbol: "Ma_in", kind: "ratio" },
    Ma_end: { symbol: "Ma_end", kind: "ratio" },
  },
  result: { symbol: "p_stat_end", kind: "pressure" },
  expression: "p_stat_in * (chi_end / chi_in) * (Ma_in / Ma_end)^2",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
  ],
  compute: ({ p_stat_in, chi_in, chi_end, Ma_in, Ma_end }) =>
    p_stat_in * (chi_end / chi_in) * (Ma_in / Ma_end) ** 2,
});
