import { explicit } from "../relation/relation.ts";

/**
 * Enthalpy in J/kg that air has when it is brought to rest without heat: its static enthalpy and the energy of its speed.
 *
 * @example totalEnthalpy.compute({ h_stat: 31.6e3, c: 31.8 }) // 32 105.6 J/kg
 */
export const totalEnthalpy = explicit({
  id: "flow/total-enthalpy",
  title: "Total enthalpy",
  inputs: {
    h_stat: { symbol: "h_stat", kind: "specificEnergy" },
    c: { symbol: "c", kind: "speed" },
  },
  result: { symbol: "h_tot", kind: "specificEnergy" },
  expression: "h_stat + c^2 / 2",
  working: "si",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 9, stagnation state of a compressible flow",
      standing: "from memory",
    },
  ],
  compute: ({ h_stat, c }) => h_stat + c ** 2 / 2,
});
