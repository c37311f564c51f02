import { explicit } from "../../relation/relation.ts";

/**
 * Temperature in K of air of C_a W/K that entered at T_in and leaves a core whose metal has T_core: E_a in W/K is what they exchange.
 *
 * @example airBehindCore.compute({ T_in: 418.15, E_a: 288.4, C_a: 304.2, T_core: 298.15 }) // 304.4 K
 */
export const airBehindCore = explicit({
  id: "exchanger/response/air-behind-core",
  title: "Air behind a core of one temperature",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    E_a: { symbol: "E_a", kind: "capacityRate" },
    C_a: { symbol: "C_a", kind: "capacityRate" },
    T_core: { symbol: "T_core", kind: "temperature" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  expression: "T_in - E_a / C_a * (T_in - T_core)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, one stream that keeps its temperature",
      standing: "derived here",
    },
  ],
  compute: ({ T_in, E_a, C_a, T_core }) => T_in - (E_a / C_a) * (T_in - T_core),
});
