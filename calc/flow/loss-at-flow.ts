import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa at a flow of m kg/s, from that at a reference flow and the same density, by a power of the flow: 1 in
 * laminar flow, nearly 2 in rough or turbulent flow.
 *
 * @example lossAtFlow.compute({ Delta_p_ref: 9220, m: 0.544, m_ref: 0.55, n_p: 1.8 }) // 9039.7 Pa
 */
export const lossAtFlow = explicit({
  id: "flow/loss-at-flow",
  title: "Pressure loss at another flow",
  inputs: {
    Delta_p_ref: { symbol: "Delta_p_ref", kind: "pressureDifference" },
    m: { symbol: "m", kind: "massFlow" },
    m_ref: { symbol: "m_ref", kind: "massFlow" },
    n_p: { symbol: "n_p", kind: "ratio" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "Delta_p_ref * (m / m_ref)^n_p",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 6, pressure drop as a power of the flow",
      standing: "from memory",
    },
  ],
  compute: ({ Delta_p_ref, m, m_ref, n_p }) => Delta_p_ref * (m / m_ref) ** n_p,
});
