import { explicit } from "../relation/relation.ts";

/**
 * Heat in W that the air gives off by cooling, with all its vapour carried along: the moist air flow that enters, in kg/s,
 * and the enthalpies in J/kg at the entering humidity ratio.
 *
 * @example sensibleDuty.compute({ m_a: 0.15405, h_in: 127000, h_out: 50000 }) // 11 862 W
 */
export const sensibleDuty = explicit({
  id: "exchanger/sensible-duty",
  title: "Heat given off by cooling",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    h_in: { symbol: "h_in", kind: "specificEnergy" },
    h_out: { symbol: "h_out", kind: "specificEnergy" },
  },
  result: { symbol: "Q_s", kind: "heatFlow" },
  expression: "m_a * (h_in - h_out)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ m_a, h_in, h_out }) => m_a * (h_in - h_out),
});
