import { explicit } from "../relation/relation.ts";

/**
 * Share of its absolute temperature that exhaust gas would lose in a perfect turbine between the same pressures: from the work
 * in J/kg, the efficiency total to static, heat capacity in J/(kg K), and temperature before the turbine in K. At 1 the gas
 * would have to expand to nothing.
 *
 * @example turbineIdealFall.compute({ Delta_h_T: 101089, eta_T: 0.7, c_p_g: 1150, T_g: 873.15 }) // 0.14382
 */
export const turbineIdealFall = explicit({
  id: "compression/turbine-ideal-fall",
  title: "Fall of temperature in an ideal turbine",
  inputs: {
    Delta_h_T: { symbol: "Delta_h_T", kind: "specificEnergy" },
    eta_T: { symbol: "eta_T", kind: "fraction" },
    c_p_g: { symbol: "c_p_g", kind: "specificHeat" },
    T_g: { symbol: "T_g", kind: "temperature" },
  },
  result: { symbol: "theta_T", kind: "fraction" },
  expression: "Delta_h_T / (eta_T * c_p_g * T_g)",
  sources: [
    { key: "saravanamuttoo", where: "chapter 2, turbine of a shaft power cycle", standing: "from memory" },
  ],
  compute: ({ Delta_h_T, eta_T, c_p_g, T_g }) => Delta_h_T / (eta_T * c_p_g * T_g),
});
