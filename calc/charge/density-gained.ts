import { explicit } from "../relation/relation.ts";

/**
 * What a device, or all of them, add to the density ratio.
 *
 * @example densityGained.compute({ D_rho_with: 1.99906, D_rho_without: 1 }) // 0.99906
 */
export const densityGained = explicit({
  id: "charge/density-gained",
  title: "Density gained",
  inputs: {
    D_rho_with: { symbol: "D_rho_with", kind: "ratio" },
    D_rho_without: { symbol: "D_rho_without", kind: "ratio" },
  },
  result: { symbol: "Delta_D", kind: "ratio" },
  expression: "D_rho_with - D_rho_without",
  sources: [{ key: "shapley-1953", where: "what a player adds to a coalition", standing: "from memory" }],
  compute: ({ D_rho_with, D_rho_without }) => D_rho_with - D_rho_without,
});
