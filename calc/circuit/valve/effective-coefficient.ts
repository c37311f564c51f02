import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Flow coefficient in m³/s that a valve and its reducers need together to pass a flow: m³/s, Pa, kg/m³.
 *
 * @example effectiveCoefficient.compute({ V_w: 9 / 3600, Delta_p: 242.52e3, rho: 997.05 }) // 0.0016037 m³/s
 */
export const effectiveCoefficient = explicit({
  id: "circuit/valve/effective-coefficient",
  title: "Flow coefficient that a flow needs",
  inputs: {
    V_w: { symbol: "V_w", kind: "liquidFlow" },
    Delta_p: { symbol: "Delta_p_eff", kind: "pressureDifference" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "K_vf", kind: "flowCoefficient" },
  expression: "V_w / sqrt(Delta_p / Delta_p_n * (rho_n / rho))",
  sources: [
    {
      key: "iec-60534-2-1",
      where: "turbulent flow of a liquid, solved for the coefficient",
      standing: "from memory",
    },
  ],
  compute: ({ V_w, Delta_p, rho }) =>
    V_w / Math.sqrt((Delta_p / constants.Delta_p_n.value) * (constants.rho_n.value / rho)),
});
