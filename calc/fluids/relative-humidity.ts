import { explicit } from "../relation/relation.ts";

/**
 * Vapour pressure over that of saturated air at the same temperature and pressure, 0 to 1.
 *
 * @example relativeHumidity.compute({ p_v: 1584.9, f_e: 1, p_ws: 3169.7 }) // 0.5
 */
export const relativeHumidity = explicit({
  id: "fluids/relative-humidity",
  title: "Relative humidity",
  inputs: {
    p_v: { symbol: "p_v", kind: "pressure" },
    f_e: { symbol: "f_e", kind: "ratio" },
    p_ws: { symbol: "p_ws", kind: "pressure" },
  },
  result: { symbol: "varphi", kind: "fraction" },
  expression: "p_v / (f_e * p_ws)",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ p_v, f_e, p_ws }) => p_v / (f_e * p_ws),
});
