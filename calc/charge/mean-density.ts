import { explicit } from "../relation/relation.ts";

/**
 * Density in kg/m³ midway between inlet and outlet of a cooler, by which a loss is carried over to another flow, and which is
 * read off two states at once. `flow/core-mean-density` is the mean of the volumes, by which friction in a core is computed.
 * Where the densities are a fifth apart the two differ by under 1 %.
 *
 * @example meanDensity.compute({ rho_in: 1.8935, rho_out: 2.2891 }) // 2.0913 kg/m³
 */
export const meanDensity = explicit({
  id: "charge/mean-density",
  title: "Density midway through a cooler",
  inputs: {
    rho_in: { symbol: "rho_in", kind: "density" },
    rho_out: { symbol: "rho_out", kind: "density" },
  },
  result: { symbol: "rho", kind: "density" },
  expression: "(rho_in + rho_out) / 2",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 6, pressure drop over density", standing: "from memory" },
  ],
  compute: ({ rho_in, rho_out }) => (rho_in + rho_out) / 2,
});
