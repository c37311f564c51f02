import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";

const { T_C, T_t, c_vap } = constants;
// Heat of vaporisation and of sublimation at 0 °C, and heat capacity of water and of ice, in J and kg.
const water = { latent: 2501e3, capacity: 4186 };
const ice = { latent: 2830e3, capacity: 2100 };

/**
 * Latent heat at a wet wick, J/kg, at its temperature in K: of water from 273.16 K up, of ice below.
 * It belongs to the wet-bulb equation; fluids/latent-heat is the better value for condensing water.
 *
 * @example wickLatentHeat.compute({ T_wb: 293.15 }) // 2 454 480 J/kg
 */
export const wickLatentHeat = property({
  id: "fluids/wick-latent-heat",
  title: "Latent heat at the wet bulb",
  inputs: { T_wb: { symbol: "T_wb", kind: "temperature" } },
  result: { symbol: "L_wb", kind: "specificEnergy" },
  name: "L_wb",
  tex: String.raw`\begin{gathered} L_\mathrm{wb} = \begin{cases} (2501 - 2.326\,t)\ \mathrm{kJ/kg} & \text{water} \\ (2830 - 0.24\,t)\ \mathrm{kJ/kg} & \text{ice} \end{cases} \\ t = \frac{T_\mathrm{wb} - T_{0\,^\circ\mathrm{C}}}{\mathrm{K}} \end{gathered}`,
  sources: [{ key: "ashrae-2017", where: "chapter 1, equations 33 and 35", standing: "open reference read" }],
  compute: ({ T_wb }) => {
    const { latent, capacity } = T_wb < T_t.value ? ice : water;
    return latent - (capacity - c_vap.value) * (T_wb - T_C.value);
  },
});
