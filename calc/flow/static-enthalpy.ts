import { explicit } from "../relation/relation.ts";

/**
 * Enthalpy in J/kg of air that moves at c in m/s, from its total enthalpy.
 *
 * @example staticEnthalpy.compute({ h_tot: 32105.6, c: 31.8 }) // 31 600 J/kg
 */
export const staticEnthalpy = explicit({
  id: "flow/static-enthalpy",
  title: "Static enthalpy",
  inputs: {
    h_tot: { symbol: "h_tot", kind: "specificEnergy" },
    c: { symbol: "c", kind: "speed" },
  },
  result: { symbol: "h_stat", kind: "specificEnergy" },
  expression: "h_tot - c^2 / 2",
  working: "si",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 9, stagnation state of a compressible flow",
      standing: "from memory",
    },
  ],
  compute: ({ h_tot, c }) => h_tot - c ** 2 / 2,
});
