import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const R_a = constants.R_a.value;
const R_w = constants.R_w.value;

/**
 * Gas constant of moist air, J per kg of moist air and K, from the humidity ratio in kg of vapour per kg of dry air.
 *
 * @example gasConstant.compute({ w: 0 }) // 287.043 J/(kg K)
 */
export const gasConstant = explicit({
  id: "fluids/gas-constant",
  title: "Gas constant of moist air",
  inputs: {
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "R_m", kind: "specificHeat" },
  expression: "(R_a + w * R_w) / (1 + w)",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ w }) => (R_a + w * R_w) / (1 + w),
});
