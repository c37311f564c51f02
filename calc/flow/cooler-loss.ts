import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa of a cooler: inlet header, core, outlet header.
 *
 * @example coolerLoss.compute({ hd_in: 1000, core: 684.4, hd_out: 500 }) // 2184.4 Pa
 */
export const coolerLoss = explicit({
  id: "flow/cooler-loss",
  title: "Pressure loss of a cooler with its headers",
  inputs: {
    hd_in: { symbol: "Delta_p_hd_in", kind: "pressureDifference" },
    core: { symbol: "Delta_p_core", kind: "pressureDifference" },
    hd_out: { symbol: "Delta_p_hd_out", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_23", kind: "pressureDifference" },
  expression: "hd_in + core + hd_out",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 6, losses in series", standing: "from memory" }],
  compute: ({ hd_in, core, hd_out }) => hd_in + core + hd_out,
});
