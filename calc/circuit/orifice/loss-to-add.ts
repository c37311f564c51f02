import { explicit } from "../../relation/relation.ts";

/**
 * Loss in Pa that a plate has to add, so that a rig loses at one air flow what its target loses there.
 *
 * @example lossToAdd.compute({ Delta_p_tgt: 12e3, Delta_p_rig: 5.5e3 }) // 6500 Pa
 */
export const lossToAdd = explicit({
  id: "circuit/orifice/loss-to-add",
  title: "Loss that a plate has to add",
  inputs: {
    Delta_p_tgt: { symbol: "Delta_p_tgt", kind: "pressureDifference" },
    Delta_p_rig: { symbol: "Delta_p_rig", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_add", kind: "pressureDifference" },
  expression: "Delta_p_tgt - Delta_p_rig",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, losses in series add up", standing: "derived here" },
  ],
  compute: ({ Delta_p_tgt, Delta_p_rig }) => Delta_p_tgt - Delta_p_rig,
});
