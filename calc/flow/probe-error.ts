import { explicit } from "../relation/relation.ts";

/**
 * What a probe reads above the total temperature, K; below zero it reads low.
 *
 * @example probeError.compute({ T_rec: 305.002, T_tot: 305.15 }) // -0.148 K
 */
export const probeError = explicit({
  id: "flow/probe-error",
  title: "Error of a probe",
  inputs: {
    T_rec: { symbol: "T_rec", kind: "temperature" },
    T_tot: { symbol: "T_tot", kind: "temperature" },
  },
  result: { symbol: "Delta_T_rec", kind: "temperatureDifference" },
  expression: "T_rec - T_tot",
  sources: [
    {
      key: "hottel-kalitinsky-1945",
      where: "recovery factor of thermocouples in a fast stream",
      standing: "from memory",
    },
  ],
  compute: ({ T_rec, T_tot }) => T_rec - T_tot,
});
