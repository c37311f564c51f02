import { explicit } from "../relation/relation.ts";

/**
 * Pressure before a turbine in Pa absolute, from its expansion ratio and the pressure after it.
 *
 * @example turbineInletPressure.compute({ r_T: 1.8697, p_T_out: 104e3 }) // 194 449 Pa
 */
export const turbineInletPressure = explicit({
  id: "compression/turbine-inlet-pressure",
  title: "Pressure before the turbine",
  inputs: {
    r_T: { symbol: "r_T", kind: "ratio" },
    p_T_out: { symbol: "p_T_out", kind: "pressure" },
  },
  result: { symbol: "p_T", kind: "pressure" },
  expression: "r_T * p_T_out",
  sources: [
    { key: "saravanamuttoo", where: "chapter 2, turbine of a shaft power cycle", standing: "from memory" },
  ],
  compute: ({ r_T, p_T_out }) => r_T * p_T_out,
});
