import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K that a probe in a stream reads: it feels the share r_rec of the rise from static to total temperature.
 *
 * @example probeReading.compute({ T_stat: 304.656, r_rec: 0.7, T_tot: 305.15 }) // 305.002 K
 */
export const probeReading = explicit({
  id: "flow/probe-reading",
  title: "Reading of a probe in the stream",
  inputs: {
    T_stat: { symbol: "T_stat", kind: "temperature" },
    r_rec: { symbol: "r_rec", kind: "fraction" },
    T_tot: { symbol: "T_tot", kind: "temperature" },
  },
  result: { symbol: "T_rec", kind: "temperature" },
  expression: "T_stat + r_rec * (T_tot - T_stat)",
  sources: [
    {
      key: "hottel-kalitinsky-1945",
      where: "recovery factor of thermocouples in a fast stream",
      standing: "from memory",
    },
    { key: "asme-ptc-19-3", where: "temperature of a moving gas", standing: "from memory" },
  ],
  compute: ({ T_stat, r_rec, T_tot }) => T_stat + r_rec * (T_tot - T_stat),
});
