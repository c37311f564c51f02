import { explicit } from "../relation/relation.ts";

/**
 * Density of air as an ideal gas, kg/m³: p in Pa absolute, R_m in J/(kg K), T in K.
 * Within 0.3 % of the real gas to 0.6 MPa and 280 to 500 K; fluids/compressibility states the deviation.
 *
 * @example density.compute({ p: 101325, R_m: 287.043, T: 288.15 }) // 1.2250 kg/m³
 */
export const density = explicit({
  id: "fluids/density",
  title: "Density of air",
  inputs: {
    p: { symbol: "p", kind: "pressure" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    T: { symbol: "T", kind: "temperature" },
  },
  result: { symbol: "rho", kind: "density" },
  expression: "p / (R_m * T)",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  accuracy: "0.3 % to 0.6 MPa, 280 to 500 K",
  compute: ({ p, R_m, T }) => p / (R_m * T),
});
