import { explicit } from "../../relation/relation.ts";

/**
 * Temperature in K of the metal of a core t seconds after a step, on its way from T_core_0 to T_core_end.
 *
 * @example coreAfterStep.compute({ T_core_0: 298.15, T_core_end: 418.15, t: 18.72, tau: 18.72 }) // 374.0 K
 */
export const coreAfterStep = explicit({
  id: "exchanger/response/core-after-step",
  title: "Temperature of a core after a step",
  inputs: {
    T_core_0: { symbol: "T_core_0", kind: "temperature" },
    T_core_end: { symbol: "T_core_end", kind: "temperature" },
    t: { symbol: "t", kind: "duration" },
    tau: { symbol: "tau", kind: "duration" },
  },
  result: { symbol: "T_core", kind: "temperature" },
  expression: "T_core_end + (T_core_0 - T_core_end) * exp(-t / tau)",
  sources: [{ key: "incropera-dewitt", where: "chapter 5, lumped capacitance", standing: "from memory" }],
  compute: ({ T_core_0, T_core_end, t, tau }) => T_core_end + (T_core_0 - T_core_end) * Math.exp(-t / tau),
});
