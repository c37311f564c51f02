import { explicit } from "../relation/relation.ts";

/**
 * Shaft work per kilogram of air, J/kg, with one heat capacity throughout.
 *
 * @example constantWork.compute({ c_p: 1004.65, T_in: 298.15, T_out: 399.95 }) // 102 273 J/kg
 */
export const constantWork = explicit({
  id: "compression/constant-work",
  title: "Work per kilogram, constant heat capacity",
  inputs: {
    c_p: { symbol: "c_p", kind: "specificHeat" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "Delta_h", kind: "specificEnergy" },
  expression: "c_p * (T_out - T_in)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ c_p, T_in, T_out }) => c_p * (T_out - T_in),
});
