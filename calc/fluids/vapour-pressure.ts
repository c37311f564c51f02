import { explicit } from "../relation/relation.ts";

/**
 * Partial pressure of the vapour, Pa: relative humidity (0 to 1) times the saturation pressure in the presence of air.
 *
 * @example vapourPressure.compute({ varphi: 0.5, f_e: 1, p_ws: 3169.7 }) // 1584.9 Pa
 */
export const vapourPressure = explicit({
  id: "fluids/vapour-pressure",
  title: "Vapour pressure from relative humidity",
  inputs: {
    varphi: { symbol: "varphi", kind: "fraction" },
    f_e: { symbol: "f_e", kind: "ratio" },
    p_ws: { symbol: "p_ws", kind: "pressure" },
  },
  result: { symbol: "p_v", kind: "pressure" },
  expression: "varphi * f_e * p_ws",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ varphi, f_e, p_ws }) => varphi * f_e * p_ws,
});
