import { explicit } from "../../relation/relation.ts";

/**
 * Part of its full flow coefficient that a quick-opening valve has at the position x_v, 0 to 1: a usual form, since the term has no
 * formula of its own.
 *
 * @example quickOpeningCharacteristic.compute({ x_v: 0.25 }) // 0.5
 */
export const quickOpeningCharacteristic = explicit({
  id: "circuit/valve/quick-opening-characteristic",
  title: "Quick-opening characteristic",
  inputs: {
    x_v: { symbol: "x_v", kind: "fraction" },
  },
  result: { symbol: "phi_v", kind: "fraction" },
  expression: "sqrt(x_v)",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "square root of the travel, a usual form",
      standing: "common practice",
    },
  ],
  compute: ({ x_v }) => Math.sqrt(x_v),
});
