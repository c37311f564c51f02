import { explicit } from "../relation/relation.ts";

/**
 * Force in N on a cap, a blank or a closed flap: gauge pressure p_g in Pa times the area in m². Below zero a vacuum pulls it in.
 *
 * @example closedEndThrust.compute({ p_g: 250e3, A: 4.5365e-3 }) // 1134 N
 */
export const closedEndThrust = explicit({
  id: "flow/closed-end-thrust",
  title: "Thrust on a closed end",
  inputs: {
    p_g: { symbol: "p_g", kind: "gaugePressure" },
    A: { symbol: "A", kind: "area" },
  },
  result: { symbol: "F_e", kind: "force" },
  expression: "p_g * A",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 2, pressure on a plane", standing: "from memory" },
  ],
  compute: ({ p_g, A }) => p_g * A,
});
