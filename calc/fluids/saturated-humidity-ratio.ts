import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const M_a = constants.M_a.value;
const M_w = constants.M_w.value;

/**
 * The most vapour that air can hold at its temperature and pressure, kg/kg. Needs f_e p_ws below p: above that water boils.
 *
 * @example saturatedHumidityRatio.compute({ f_e: 1.00927, p_ws: 6632.4, p: 280e3 }) // 0.01523
 */
export const saturatedHumidityRatio = explicit({
  id: "fluids/saturated-humidity-ratio",
  title: "Humidity ratio of saturated air",
  inputs: {
    f_e: { symbol: "f_e", kind: "ratio" },
    p_ws: { symbol: "p_ws", kind: "pressure" },
    p: { symbol: "p", kind: "pressure" },
  },
  result: { symbol: "w_s", kind: "humidityRatio" },
  expression: "(M_w / M_a) * (f_e * p_ws / (p - f_e * p_ws))",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ f_e, p_ws, p }) => (M_w / M_a) * ((f_e * p_ws) / (p - f_e * p_ws)),
});
