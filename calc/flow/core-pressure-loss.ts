import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa of a core from its four parts. Static pressure just before and just behind the face.
 *
 * @example corePressureLoss.compute({ ent: 54.65, acc: -39.42, fr: 693.58, exit: -24.39 }) // 684.4 Pa
 */
export const corePressureLoss = explicit({
  id: "flow/core-pressure-loss",
  title: "Pressure loss of a core",
  inputs: {
    ent: { symbol: "Delta_p_ent", kind: "pressureDifference" },
    acc: { symbol: "Delta_p_acc", kind: "pressureDifference" },
    fr: { symbol: "Delta_p_fr", kind: "pressureDifference" },
    exit: { symbol: "Delta_p_exit", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_core", kind: "pressureDifference" },
  expression: "ent + acc + fr + exit",
  working: "si",
  sources: [{ key: "kays-london", where: "chapter 2, pressure drop of a core", standing: "from memory" }],
  compute: ({ ent, acc, fr, exit }) => ent + acc + fr + exit,
});
