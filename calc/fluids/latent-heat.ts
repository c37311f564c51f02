import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const T_C = constants.T_C.value;
const c_fg = constants.c_fg.value;
const h_fg0 = constants.h_fg0.value;

/**
 * Heat given off by water that condenses at T in K, J/kg. A straight line, good to 0.1 % from 0 to 60 °C.
 *
 * @example latentHeat.compute({ T: 311.15 }) // 2 411 182 J/kg
 */
export const latentHeat = explicit({
  id: "fluids/latent-heat",
  title: "Latent heat of condensing water",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
  },
  result: { symbol: "h_fg", kind: "specificEnergy" },
  expression: "h_fg0 - c_fg * (T - T_C)",
  sources: [
    { key: "iapws-if97", where: "straight line through the heat of vaporisation", standing: "derived here" },
  ],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 333.15,
      says: "The straight line for the latent heat was fitted to temperatures within the bound; it is carried on past it.",
    },
  ],
  accuracy: "0.1 %",
  compute: ({ T }) => h_fg0 - c_fg * (T - T_C),
});
