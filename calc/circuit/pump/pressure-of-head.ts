import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Pressure in Pa under a head of liquid in m, density in kg/m³.
 *
 * @example pressureOfHead.compute({ rho: 997.05, h: 28 }) // 2.7378e5 Pa
 */
export const pressureOfHead = explicit({
  id: "circuit/pump/pressure-of-head",
  title: "Pressure of a head of liquid",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    h: { symbol: "h_w", kind: "head" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "rho * g_0 * h",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 2, hydrostatic pressure", standing: "from memory" },
  ],
  compute: ({ rho, h }) => rho * constants.g_0.value * h,
});
