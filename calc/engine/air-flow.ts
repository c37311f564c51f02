import { explicit } from "../relation/relation.ts";

/**
 * Air that an engine draws in, kg/s: volumetric efficiency, density in kg/m³ at the place to which that efficiency refers,
 * displacement in m³, speed in rev/s, and revolutions per cycle (2 for a four-stroke, 1 for a two-stroke).
 *
 * @example airFlow.compute({ eta_v: 0.92, rho: 2.2834, V_d: 4.4e-3, n: 33.33, n_R: 2 }) // 0.154 kg/s
 */
export const airFlow = explicit({
  id: "engine/air-flow",
  title: "Air flow from displacement",
  inputs: {
    eta_v: { symbol: "eta_v", kind: "fraction" },
    rho: { symbol: "rho", kind: "density" },
    V_d: { symbol: "V_d", kind: "volume" },
    n: { symbol: "n", kind: "rotationalSpeed" },
    n_R: { symbol: "n_R", kind: "ratio" },
  },
  result: { symbol: "m_a", kind: "massFlow" },
  expression: "eta_v * rho * V_d * (n / n_R)",
  sources: [{ key: "heywood", where: "chapters 2 and 3", standing: "from memory" }],
  compute: ({ eta_v, rho, V_d, n, n_R }) => eta_v * rho * V_d * (n / n_R),
});
