import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa at a mean density rho, kg/m³, from that of the same mass flow at the mean density rho_ref: half as dense
 * air has to go twice as fast, and loses twice as much.
 *
 * @example measuredLossAtDensity.compute({ Delta_p_ref: 9000, rho_ref: 2.0913, rho: 1.1225 }) // 16768 Pa
 */
export const measuredLossAtDensity = explicit({
  id: "flow/measured-loss-at-density",
  title: "Pressure loss at another density",
  inputs: {
    Delta_p_ref: { symbol: "Delta_p_ref", kind: "pressureDifference" },
    rho_ref: { symbol: "rho_ref", kind: "density" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "Delta_p_ref * (rho_ref / rho)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 6, pressure drop over density", standing: "from memory" },
  ],
  compute: ({ Delta_p_ref, rho_ref, rho }) => Delta_p_ref * (rho_ref / rho),
});
