import { explicit } from "../relation/relation.ts";

/**
 * Total temperature in K from what a probe reads, its recovery factor and the static temperature.
 *
 * @example totalTemperatureFromProbe.compute({ T_stat: 304.656, T_rec: 305.0018, r_rec: 0.7 }) // 305.15 K
 */
export const totalTemperatureFromProbe = explicit({
  id: "flow/total-temperature-from-probe",
  title: "Total temperature from a probe",
  inputs: {
    T_stat: { symbol: "T_stat", kind: "temperature" },
    T_rec: { symbol: "T_rec", kind: "temperature" },
    r_rec: { symbol: "r_rec", kind: "fraction" },
  },
  result: { symbol: "T_tot", kind: "temperature" },
  expression: "T_stat + (T_rec - T_stat) / r_rec",
  sources: [
    {
      key: "hottel-kalitinsky-1945",
      where: "recovery factor of thermocouples in a fast stream",
      standing: "from memory",
    },
    { key: "asme-ptc-19-3", where: "temperature of a moving gas", standing: "from memory" },
  ],
  compute: ({ T_stat, T_rec, r_rec }) => T_stat + (T_rec - T_stat) / r_rec,
});
