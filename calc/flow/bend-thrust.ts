import { explicit } from "../relation/relation.ts";

/**
 * Force in N on a bend, along the line that halves its outside: the gauge pressure p_g in Pa on the bore and the momentum of the
 * flow. It is below zero where a vacuum pulls the bend in. theta in rad, A in m², m_a in kg/s, c in m/s.
 *
 * @example bendThrust.compute({ p_g: 250e3, A: 4.5365e-3, m_a: 0.4, c: 25, theta: 1.5708 }) // 1618 N
 */
export const bendThrust = explicit({
  id: "flow/bend-thrust",
  title: "Thrust on a bend",
  inputs: {
    p_g: { symbol: "p_g", kind: "gaugePressure" },
    A: { symbol: "A", kind: "area" },
    m_a: { symbol: "m_a", kind: "massFlow" },
    c: { symbol: "c", kind: "speed" },
    theta: { symbol: "theta", kind: "angle" },
  },
  result: { symbol: "F_b", kind: "force" },
  expression: "2 * (p_g * A + m_a * c) * sin(theta / 2)",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 3, momentum: force on a bend", standing: "from memory" },
  ],
  compute: ({ p_g, A, m_a, c, theta }) => 2 * (p_g * A + m_a * c) * Math.sin(theta / 2),
});
