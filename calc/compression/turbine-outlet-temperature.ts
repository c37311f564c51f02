import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K of exhaust gas after a turbine that takes the work Delta_h_T, J/kg, out of each kilogram.
 *
 * @example turbineOutletTemperature.compute({ T_g: 873.15, Delta_h_T: 101089, c_p_g: 1150 }) // 785.25 K
 */
export const turbineOutletTemperature = explicit({
  id: "compression/turbine-outlet-temperature",
  title: "Temperature after the turbine",
  inputs: {
    T_g: { symbol: "T_g", kind: "temperature" },
    Delta_h_T: { symbol: "Delta_h_T", kind: "specificEnergy" },
    c_p_g: { symbol: "c_p_g", kind: "specificHeat" },
  },
  result: { symbol: "T_g_out", kind: "temperature" },
  expression: "T_g - Delta_h_T / c_p_g",
  sources: [
    { key: "saravanamuttoo", where: "chapter 2, turbine of a shaft power cycle", standing: "from memory" },
  ],
  compute: ({ T_g, Delta_h_T, c_p_g }) => T_g - Delta_h_T / c_p_g,
});
