import { explicit } from "../relation/relation.ts";

/**
 * Heat in W that condensing water gives off.
 *
 * @example latentDuty.compute({ m_c: 0.013385, h_fg: 2411182 }) // 32 274 W
 */
export const latentDuty = explicit({
  id: "exchanger/latent-duty",
  title: "Heat given off by condensing",
  inputs: {
    m_c: { symbol: "m_c", kind: "massFlow" },
    h_fg: { symbol: "h_fg", kind: "specificEnergy" },
  },
  result: { symbol: "Q_l", kind: "heatFlow" },
  expression: "m_c * h_fg",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ m_c, h_fg }) => m_c * h_fg,
});
