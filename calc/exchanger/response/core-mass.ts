import { explicit } from "../../relation/relation.ts";

/**
 * Metal in kg with which a core has the time constant tau in s. Units as in exchanger/response/time-constant.
 *
 * @example coreMass.compute({ tau: 18.72, c_core: 900, E_a: 288.4, E_w: 0 }) // 5.999 kg
 */
export const coreMass = explicit({
  id: "exchanger/response/core-mass",
  title: "Metal for a time constant",
  inputs: {
    tau: { symbol: "tau", kind: "duration" },
    c_core: { symbol: "c_core", kind: "specificHeat" },
    E_a: { symbol: "E_a", kind: "capacityRate" },
    E_w: { symbol: "E_w", kind: "capacityRate" },
  },
  result: { symbol: "M_core", kind: "mass" },
  expression: "tau * (E_a + E_w) / c_core",
  sources: [{ key: "incropera-dewitt", where: "chapter 5, lumped capacitance", standing: "derived here" }],
  compute: ({ tau, c_core, E_a, E_w }) => (tau * (E_a + E_w)) / c_core,
});
