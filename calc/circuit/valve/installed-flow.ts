import { explicit } from "../../relation/relation.ts";

/**
 * Part of the full flow that a valve of authority N_v passes where it opens the part phi_v of its flow coefficient: driven by a constant
 * head against losses that grow with the square of the flow.
 *
 * @example installedFlow.compute({ N_v: 0.3, phi_v: 0.2 }) // 0.34922
 */
export const installedFlow = explicit({
  id: "circuit/valve/installed-flow",
  title: "Installed characteristic",
  inputs: {
    N_v: { symbol: "N_v", kind: "fraction" },
    phi_v: { symbol: "phi_v", kind: "fraction" },
  },
  result: { symbol: "q_v", kind: "fraction" },
  expression: "1 / sqrt(1 - N_v + N_v / phi_v^2)",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "two resistances in series, each as the square of the flow",
      standing: "derived here",
    },
  ],
  compute: ({ N_v, phi_v }) => 1 / Math.sqrt(1 - N_v + N_v / phi_v ** 2),
});
