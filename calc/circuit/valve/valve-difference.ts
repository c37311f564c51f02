import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Pressure difference in Pa across a valve that passes a liquid and is not choked: m³/s, kg/m³.
 *
 * @example valveDifference.compute({ V_w: 9 / 3600, K_v: 5.7732 / 3600, rho: 997.05 }) // 2.4253e5 Pa
 */
export const valveDifference = explicit({
  id: "circuit/valve/valve-difference",
  title: "Pressure difference across a control valve",
  inputs: {
    V_w: { symbol: "V_w", kind: "liquidFlow" },
    K_v: { symbol: "K_v", kind: "flowCoefficient" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "Delta_p_v", kind: "pressureDifference" },
  expression: "Delta_p_n * (rho / rho_n) * (V_w / K_v)^2",
  sources: [
    {
      key: "iec-60534-2-1",
      where: "turbulent flow of a liquid, solved for the difference",
      standing: "from memory",
    },
  ],
  compute: ({ V_w, K_v, rho }) =>
    constants.Delta_p_n.value * (rho / constants.rho_n.value) * (V_w / K_v) ** 2,
});
