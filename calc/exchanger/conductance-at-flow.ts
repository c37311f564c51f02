import { explicit } from "../relation/relation.ts";

/**
 * Heat conductance in W/K of one side of a cooler at a flow of m kg/s, from that at a reference flow, by a power of the flow:
 * about 0.4 to 0.8 for fins, 0.8 for turbulent flow in tubes.
 *
 * @example conductanceAtFlow.compute({ UA_ref: 1520, m: 0.544, m_ref: 0.55, n_h: 0.7 }) // 1508.4 W/K
 */
export const conductanceAtFlow = explicit({
  id: "exchanger/conductance-at-flow",
  title: "Heat conductance of one side at another flow",
  inputs: {
    UA_ref: { symbol: "UA_ref", kind: "conductance" },
    m: { symbol: "m", kind: "massFlow" },
    m_ref: { symbol: "m_ref", kind: "massFlow" },
    n_h: { symbol: "n_h", kind: "ratio" },
  },
  result: { symbol: "UA_a", kind: "conductance" },
  expression: "UA_ref * (m / m_ref)^n_h",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 9, heat transfer coefficient as a power of the flow",
      standing: "from memory",
    },
  ],
  compute: ({ UA_ref, m, m_ref, n_h }) => UA_ref * (m / m_ref) ** n_h,
});
