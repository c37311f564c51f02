import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K before a turbine at which a given expansion ratio gives the work Delta_h_T, J/kg. The ratio has to be above 1.
 *
 * @example turbineNeededTemperature.compute({ Delta_h_T: 101089, eta_T: 0.7, c_p_g: 1150, r_T: 2.0365, kappa_g: 1.33 }) // 776.2 K
 */
export const turbineNeededTemperature = explicit({
  id: "compression/turbine-needed-temperature",
  title: "Exhaust temperature for an expansion ratio",
  inputs: {
    Delta_h_T: { symbol: "Delta_h_T", kind: "specificEnergy" },
    eta_T: { symbol: "eta_T", kind: "fraction" },
    c_p_g: { symbol: "c_p_g", kind: "specificHeat" },
    r_T: { symbol: "r_T", kind: "ratio" },
    kappa_g: { symbol: "kappa_g", kind: "ratio" },
  },
  result: { symbol: "T_g", kind: "temperature" },
  expression: "Delta_h_T / (eta_T * c_p_g * (1 - r_T^((1 - kappa_g) / kappa_g)))",
  sources: [
    { key: "saravanamuttoo", where: "chapter 2, turbine of a shaft power cycle", standing: "from memory" },
  ],
  compute: ({ Delta_h_T, eta_T, c_p_g, r_T, kappa_g }) =>
    Delta_h_T / (eta_T * c_p_g * (1 - r_T ** ((1 - kappa_g) / kappa_g))),
});
