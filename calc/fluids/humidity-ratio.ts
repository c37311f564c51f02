import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const M_a = constants.M_a.value;
const M_w = constants.M_w.value;

/**
 * Mass of vapour per mass of dry air, kg/kg. p_v below p, both in Pa absolute. Compression and heating do not change it.
 *
 * @example humidityRatio.compute({ p_v: 1584.6, p: 101325 }) // 0.00988
 */
export const humidityRatio = explicit({
  id: "fluids/humidity-ratio",
  title: "Humidity ratio from the vapour pressure",
  inputs: {
    p_v: { symbol: "p_v", kind: "pressure" },
    p: { symbol: "p", kind: "pressure" },
  },
  result: { symbol: "w", kind: "humidityRatio" },
  expression: "(M_w / M_a) * (p_v / (p - p_v))",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ p_v, p }) => (M_w / M_a) * (p_v / (p - p_v)),
});
