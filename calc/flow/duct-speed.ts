import { explicit } from "../relation/relation.ts";

/**
 * Mean speed in m/s of a mass flow in kg/s through an area in m², at the static density in kg/m³.
 *
 * @example ductSpeed.compute({ m_a: 0.35, rho: 2, A: 4.536e-3 }) // 38.58 m/s
 */
export const ductSpeed = explicit({
  id: "flow/duct-speed",
  title: "Speed in a duct",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    rho: { symbol: "rho", kind: "density" },
    A: { symbol: "A", kind: "area" },
  },
  result: { symbol: "c", kind: "speed" },
  expression: "m_a / (rho * A)",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 3, conservation of mass", standing: "from memory" },
  ],
  compute: ({ m_a, rho, A }) => m_a / (rho * A),
});
