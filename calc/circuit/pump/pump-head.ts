import { explicit } from "../../relation/relation.ts";

/**
 * Head of a pump in m at a flow: head at no flow, less a part that grows with the flow and one with its square. The two are what they
 * are at a reference flow. m³/s.
 *
 * @example pumpHead.compute({ h_P0: 30, h_P1: 0, h_P2: 4, V_w: 9 / 3600, V_ref: 20 / 3600 }) // 29.19 m
 */
export const pumpHead = explicit({
  id: "circuit/pump/pump-head",
  title: "Head of a pump",
  inputs: {
    h_P0: { symbol: "h_P0", kind: "head" },
    h_P1: { symbol: "h_P1", kind: "head" },
    h_P2: { symbol: "h_P2", kind: "head" },
    V_w: { symbol: "V_w", kind: "liquidFlow" },
    V_ref: { symbol: "V_ref", kind: "liquidFlow" },
  },
  result: { symbol: "h_P", kind: "head" },
  expression: "h_P0 - h_P1 * (V_w / V_ref) - h_P2 * (V_w / V_ref)^2",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "chapter 11, pump curves as a parabola",
      standing: "common practice",
    },
  ],
  compute: ({ h_P0, h_P1, h_P2, V_w, V_ref }) => h_P0 - h_P1 * (V_w / V_ref) - h_P2 * (V_w / V_ref) ** 2,
});
