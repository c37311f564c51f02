import { explicit } from "../relation/relation.ts";

/**
 * Loss of a cooler in Pa in the same engine with less fitted, from that with everything fitted. The flow goes with the density
 * of the charge, so with the density ratio; a loss times the mean density in the cooler (rho, kg/m³) goes with a power of the
 * flow.
 *
 * @example lossOfFitted.compute({ Delta_p_ref: 9000, rho_ref: 2.0913, rho: 1.12254, D_rho: 0.9605, D_rho_all: 1.99906, n_p: 2 }) // 3871 Pa
 */
export const lossOfFitted = explicit({
  id: "charge/loss-of-fitted",
  title: "Loss of a cooler with less fitted",
  inputs: {
    Delta_p_ref: { symbol: "Delta_p_ref", kind: "pressureDifference" },
    rho_ref: { symbol: "rho_ref", kind: "density" },
    rho: { symbol: "rho", kind: "density" },
    D_rho: { symbol: "D_rho", kind: "ratio" },
    D_rho_all: { symbol: "D_rho_all", kind: "ratio" },
    n_p: { symbol: "n_p", kind: "ratio" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "Delta_p_ref * (rho_ref / rho) * (D_rho / D_rho_all)^n_p",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 6, pressure drop as a power of the flow, over density",
      standing: "derived here",
    },
  ],
  compute: ({ Delta_p_ref, rho_ref, rho, D_rho, D_rho_all, n_p }) =>
    Delta_p_ref * (rho_ref / rho) * (D_rho / D_rho_all) ** n_p,
});
