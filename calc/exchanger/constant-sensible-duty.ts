import { explicit } from "../relation/relation.ts";

/**
 * Heat in W that the air gives off by cooling, with one heat capacity throughout, in J/(kg K); temperatures in K.
 *
 * @example constantSensibleDuty.compute({ m_a: 0.15405, c_p: 1004.65, T_in: 399.95, T_out: 323.15 }) // 11 886 W
 */
export const constantSensibleDuty = explicit({
  id: "exchanger/constant-sensible-duty",
  title: "Heat given off by cooling, constant heat capacity",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    c_p: { symbol: "c_p", kind: "specificHeat" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "Q_s", kind: "heatFlow" },
  expression: "m_a * c_p * (T_in - T_out)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ m_a, c_p, T_in, T_out }) => m_a * c_p * (T_in - T_out),
});
