import { explicit } from "../../relation/relation.ts";

/**
 * Flow in m³/s of a pump at another speed, at the matching point of its curve.
 *
 * @example affinityFlow.compute({ V_ref: 0.005, n: 40, n_ref: 48 }) // 0.0041667 m³/s
 */
export const affinityFlow = explicit({
  id: "circuit/pump/affinity-flow",
  title: "Pump at another speed, flow",
  inputs: {
    V_ref: { symbol: "V_ref", kind: "liquidFlow" },
    n: { symbol: "n", kind: "rotationalSpeed" },
    n_ref: { symbol: "n_ref", kind: "rotationalSpeed" },
  },
  result: { symbol: "V_w", kind: "liquidFlow" },
  expression: "V_ref * (n / n_ref)",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 11, similarity rules of pumps", standing: "from memory" },
  ],
  compute: ({ V_ref, n, n_ref }) => V_ref * (n / n_ref),
});
