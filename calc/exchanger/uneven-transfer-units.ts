import { explicit } from "../relation/relation.ts";

/**
 * Transfer units of a part of the face, on its own air, when omega times its even share of the air flows through it.
 *
 * `NTU` is that of the whole cooler with even air, `s_a` the share of the air side in the resistance to heat, 0 to 1, and `n_h`
 * the exponent of the conductance of the air side over the flow. With `s_a` = 1 the exponent is that of the whole conductance.
 *
 * @example unevenTransferUnits.compute({ NTU: 1.58, omega: 1.2, s_a: 1, n_h: 0.25 }) // 1.378
 */
export const unevenTransferUnits = explicit({
  id: "exchanger/uneven-transfer-units",
  title: "Transfer units of a part of the face",
  inputs: {
    NTU: { symbol: "NTU", kind: "ratio" },
    omega: { symbol: "omega", kind: "ratio" },
    s_a: { symbol: "s_a", kind: "fraction" },
    n_h: { symbol: "n_h", kind: "ratio" },
  },
  result: { symbol: "NTU_i", kind: "ratio" },
  expression: "NTU / (omega * (s_a * omega^(-n_h) + 1 - s_a))",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, omega, s_a, n_h }) => NTU / (omega * (s_a * omega ** -n_h + 1 - s_a)),
});
