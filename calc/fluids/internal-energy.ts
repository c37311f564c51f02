import { explicit } from "../relation/relation.ts";

/**
 * Internal energy, J/kg: enthalpy less pressure times specific volume. p in Pa absolute, v in m³/kg.
 *
 * @example internalEnergy.compute({ h: 115331.273, p: 3e6, v: 0.00100215168 }) // 112 324.818 J/kg
 */
export const internalEnergy = explicit({
  id: "fluids/internal-energy",
  title: "Internal energy",
  inputs: {
    h: { symbol: "h", kind: "specificEnergy" },
    p: { symbol: "p", kind: "pressure" },
    v: { symbol: "v", kind: "specificVolume" },
  },
  result: { symbol: "u", kind: "specificEnergy" },
  expression: "h - p * v",
  sources: [{ key: "moran-shapiro", where: "chapter 3, definition of enthalpy", standing: "from memory" }],
  compute: ({ h, p, v }) => h - p * v,
});
