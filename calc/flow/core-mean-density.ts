import { explicit } from "../relation/relation.ts";

/**
 * Mean density in kg/m³ of air between two states, from the mean of its specific volumes: friction goes with the volume.
 *
 * @example coreMeanDensity.compute({ rho_in: 1.97701, rho_out: 2.72159 }) // 2.2903 kg/m³
 */
export const coreMeanDensity = explicit({
  id: "flow/core-mean-density",
  title: "Mean density of the air",
  inputs: {
    rho_in: { symbol: "rho_in", kind: "density" },
    rho_out: { symbol: "rho_out", kind: "density" },
  },
  result: { symbol: "rho_mean", kind: "density" },
  expression: "2 / (1 / rho_in + 1 / rho_out)",
  sources: [
    {
      key: "kays-london",
      where: "chapter 2, pressure drop of a core, mean specific volume",
      standing: "from memory",
    },
  ],
  compute: ({ rho_in, rho_out }) => 2 / (1 / rho_in + 1 / rho_out),
});
