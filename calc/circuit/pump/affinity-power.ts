import { explicit } from "../../relation/relation.ts";

/**
 * Power in W that a pump takes at another speed, at the matching point of its curve.
 *
 * @example affinityPower.compute({ W_ref: 1500, n: 40, n_ref: 48 }) // 868.06 W
 */
export const affinityPower = explicit({
  id: "circuit/pump/affinity-power",
  title: "Pump at another speed, power",
  inputs: {
    W_ref: { symbol: "W_ref", kind: "power" },
    n: { symbol: "n", kind: "rotationalSpeed" },
    n_ref: { symbol: "n_ref", kind: "rotationalSpeed" },
  },
  result: { symbol: "W_P", kind: "power" },
  expression: "W_ref * (n / n_ref)^3",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 11, similarity rules of pumps", standing: "from memory" },
  ],
  compute: ({ W_ref, n, n_ref }) => W_ref * (n / n_ref) ** 3,
});
