import { explicit } from "../relation/relation.ts";

/**
 * Entrance loss coefficient of a core, on the dynamic pressure in its passages, from the contraction C_c of the jet and the
 * momentum factor K_d of the flow in the passages: 1 for even speed, more for the profile of developed flow. The jet
 * loses what any sudden widening does; the rest is what the profile takes to form.
 *
 * @example coreEntranceCoefficient.compute({ C_c: 0.68296, K_d: 1.2 }) // 0.6155
 */
export const coreEntranceCoefficient = explicit({
  id: "flow/core-entrance-coefficient",
  title: "Entrance loss coefficient of a core",
  inputs: {
    C_c: { symbol: "C_c", kind: "ratio" },
    K_d: { symbol: "K_d", kind: "ratio" },
  },
  result: { symbol: "K_c", kind: "ratio" },
  expression: "(1 / C_c - 1)^2 + 2 * (K_d - 1)",
  sources: [{ key: "kays-1950", where: "entrance of many equal passages", standing: "from memory" }],
  accuracy: "0.1 of the dynamic pressure",
  compute: ({ C_c, K_d }) => (1 / C_c - 1) ** 2 + 2 * (K_d - 1),
});
