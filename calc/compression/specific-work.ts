import { explicit } from "../relation/relation.ts";

/**
 * Shaft work per kilogram of air, J/kg: the rise of enthalpy, where no heat is lost.
 *
 * @example specificWork.compute({ h_in: 25000, h_out: 127000 }) // 102 000 J/kg
 */
export const specificWork = explicit({
  id: "compression/specific-work",
  title: "Work per kilogram",
  inputs: {
    h_in: { symbol: "h_in", kind: "specificEnergy" },
    h_out: { symbol: "h_out", kind: "specificEnergy" },
  },
  result: { symbol: "Delta_h", kind: "specificEnergy" },
  expression: "h_out - h_in",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ h_in, h_out }) => h_out - h_in,
});
