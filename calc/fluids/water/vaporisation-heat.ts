import { explicit } from "../../relation/relation.ts";

/**
 * Heat that turns a kilogram of boiling water into steam, J/kg: the enthalpy of the steam less that of the water, both
 * at the boiling temperature of the same pressure.
 *
 * @example vaporisationHeat.compute({ h_g: 2675572, h_l: 419098 }) // 2 256 474 J/kg
 */
export const vaporisationHeat = explicit({
  id: "fluids/water/vaporisation-heat",
  title: "Heat of vaporisation",
  inputs: {
    h_g: { symbol: "h_g", kind: "specificEnergy" },
    h_l: { symbol: "h_l", kind: "specificEnergy" },
  },
  result: { symbol: "h_fg", kind: "specificEnergy" },
  expression: "h_g - h_l",
  sources: [
    { key: "iapws-if97", where: "regions 1 and 2 on the saturation curve", standing: "derived here" },
  ],
  compute: ({ h_g, h_l }) => h_g - h_l,
});
