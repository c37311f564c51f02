import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const M_a = constants.M_a.value;
const M_w = constants.M_w.value;

/**
 * Partial pressure of the vapour, Pa, in air of humidity ratio w (kg/kg) at p in Pa absolute.
 *
 * @example vapourPressureFromHumidityRatio.compute({ w: 0.00988, p: 101325 }) // 1584.4 Pa
 */
export const vapourPressureFromHumidityRatio = explicit({
  id: "fluids/vapour-pressure-from-humidity-ratio",
  title: "Vapour pressure from the humidity ratio",
  inputs: {
    w: { symbol: "w", kind: "humidityRatio" },
    p: { symbol: "p", kind: "pressure" },
  },
  result: { symbol: "p_v", kind: "pressure" },
  expression: "w * p / (M_w / M_a + w)",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ w, p }) => (w * p) / (M_w / M_a + w),
});
