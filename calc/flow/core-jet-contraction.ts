import { explicit } from "../relation/relation.ts";

/**
 * Area of the narrowest jet behind a sharp entrance over that of the passage, 0 to 1, from the ratio sigma of the free-flow
 * area to the area of the face, 0 to 1.
 *
 * @example coreJetContraction.compute({ sigma: 0.5 }) // 0.683
 */
export const coreJetContraction = explicit({
  id: "flow/core-jet-contraction",
  title: "Contraction of the jet at a sharp entrance",
  inputs: {
    sigma: { symbol: "sigma", kind: "fraction" },
  },
  result: { symbol: "C_c", kind: "ratio" },
  expression: "1 - (1 - sigma) / (2.08 * (1 - sigma) + 0.5371)",
  sources: [
    {
      key: "geiger-1964",
      where: "fit of the contraction at a sharp-edged entrance",
      standing: "from memory",
    },
  ],
  compute: ({ sigma }) => 1 - (1 - sigma) / (2.08 * (1 - sigma) + 0.5371),
});
