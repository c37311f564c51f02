import { explicit } from "../../relation/relation.ts";

/**
 * Mean Nusselt number of laminar flow over the length of a passage whose wall has one temperature: from Nu_d far from the
 * entrance, 3.66 in a round tube, and the Graetz number. In a round tube within 1 % of the exact one; for other shapes an
 * approximation.
 *
 * @example laminarNusselt.compute({ Nu_d: 3.66, Gz: 50 }) // 5.7895
 */
export const laminarNusselt = explicit({
  id: "exchanger/film/laminar-nusselt",
  title: "Nusselt number of laminar flow in a passage",
  inputs: {
    Nu_d: { symbol: "Nu_d", kind: "ratio" },
    Gz: { symbol: "Gz", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression: "(Nu_d^3 + 0.7^3 + (1.615 * Gz^(1 / 3) - 0.7)^3)^(1 / 3)",

  sources: [
    {
      key: "vdi-heat-atlas",
      where: "part G1, laminar flow at a wall of one temperature",
      standing: "from memory",
    },
    { key: "gnielinski-2013", where: "laminar flow", standing: "from memory" },
  ],
  ranges: [
    {
      input: "Gz",
      from: 0.1,
      to: 10000,
      says: "The formula is for passages that are neither endless nor next to nothing, within the bound.",
    },
  ],
  accuracy: "10 %",
  compute: ({ Nu_d, Gz }) => Math.cbrt(Nu_d ** 3 + 0.7 ** 3 + (1.615 * Math.cbrt(Gz) - 0.7) ** 3),
});
