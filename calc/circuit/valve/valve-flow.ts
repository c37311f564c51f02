import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Flow of a liquid in m³/s through a valve: its flow coefficient is the flow of water of 999.1 kg/m³ at 1 bar. F_P is 1 without
 * reducers; the difference is never more than that which chokes. Pa, kg/m³.
 *
 * @example valveFlow.compute({ F_P: 1, K_v: 25 / 3600, Delta_p: 81280, rho: 997.05 }) // 0.0062672 m³/s
 */
export const valveFlow = explicit({
  id: "circuit/valve/valve-flow",
  title: "Flow through a control valve",
  inputs: {
    F_P: { symbol: "F_P", kind: "ratio" },
    K_v: { symbol: "K_v", kind: "flowCoefficient" },
    Delta_p: { symbol: "Delta_p_eff", kind: "pressureDifference" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "V_w", kind: "liquidFlow" },
  expression: "F_P * K_v * sqrt(Delta_p / Delta_p_n * (rho_n / rho))",
  sources: [{ key: "iec-60534-2-1", where: "turbulent flow of a liquid", standing: "from memory" }],
  compute: ({ F_P, K_v, Delta_p, rho }) =>
    F_P * K_v * Math.sqrt((Delta_p / constants.Delta_p_n.value) * (constants.rho_n.value / rho)),
});
