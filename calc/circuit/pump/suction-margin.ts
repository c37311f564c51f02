import { explicit } from "../../relation/relation.ts";

/**
 * How much more suction head a pump has than it needs, m.
 *
 * @example suctionMargin.compute({ NPSH_A: 7.487, NPSH_R: 3 }) // 4.487 m
 */
export const suctionMargin = explicit({
  id: "circuit/pump/suction-margin",
  title: "Margin of suction head",
  inputs: {
    NPSH_A: { symbol: "NPSH_A", kind: "head" },
    NPSH_R: { symbol: "NPSH_R", kind: "head" },
  },
  result: { symbol: "Delta_NPSH", kind: "head" },
  expression: "NPSH_A - NPSH_R",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 11, net positive suction head", standing: "from memory" },
  ],
  compute: ({ NPSH_A, NPSH_R }) => NPSH_A - NPSH_R,
});
