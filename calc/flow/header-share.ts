import { explicit } from "../relation/relation.ts";

/**
 * Share of the headers in the pressure loss of a cooler, both in Pa.
 *
 * @example headerShare.compute({ hd_in: 1000, hd_out: 500, Delta_p: 2184.4 }) // 0.6867
 */
export const headerShare = explicit({
  id: "flow/header-share",
  title: "Share of the headers",
  inputs: {
    hd_in: { symbol: "Delta_p_hd_in", kind: "pressureDifference" },
    hd_out: { symbol: "Delta_p_hd_out", kind: "pressureDifference" },
    Delta_p: { symbol: "Delta_p_23", kind: "pressureDifference" },
  },
  result: { symbol: "s_hd", kind: "fraction" },
  expression: "(hd_in + hd_out) / Delta_p",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 6, share of the headers", standing: "derived here" }],
  compute: ({ hd_in, hd_out, Delta_p }) => (hd_in + hd_out) / Delta_p,
});
