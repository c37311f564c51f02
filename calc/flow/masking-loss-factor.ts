import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss of a masked core over that of the clean one: the speed factor omega of the open passages to the exponent of
 * the loss, 1 in laminar flow to nearly 2.
 *
 * @example maskingLossFactor.compute({ omega: 1.25, n_p: 1.8 }) // 1.494
 */
export const maskingLossFactor = explicit({
  id: "flow/masking-loss-factor",
  title: "Pressure loss of a masked core",
  inputs: {
    omega: { symbol: "omega", kind: "ratio" },
    n_p: { symbol: "n_p", kind: "ratio" },
  },
  result: { symbol: "Phi", kind: "ratio" },
  expression: "omega^n_p",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 6, pressure drop as a power of the flow",
      standing: "from memory",
    },
  ],
  compute: ({ omega, n_p }) => omega ** n_p,
});
