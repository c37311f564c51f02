import { explicit } from "../relation/relation.ts";

/**
 * The mass that a volume flow carries, in kg/s.
 *
 * `rho` is the density in kg/m³ at the conditions that the volume flow in m³/s is stated at: those at the meter, or those
 * of a named standard. Continuity.
 *
 * @example massFlow.compute({ rho: 1.2, V_dot: 0.5 }) // 0.6 kg/s
 */
export const massFlow = explicit({
  id: "fluids/mass-flow",
  title: "Mass flow from a volume flow",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    V_dot: { symbol: "V_dot", kind: "volumeFlow" },
  },
  result: { symbol: "m", kind: "massFlow" },
  expression: "rho * V_dot",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "from memory" },
  ],
  compute: ({ rho, V_dot }) => rho * V_dot,
});
