import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K at which air has a density, as an ideal gas: p in Pa absolute, R_m in J/(kg K), rho in kg/m³.
 *
 * @example temperatureAtDensity.compute({ p: 101325, R_m: 287.043, rho: 1.225 }) // 288.16 K
 */
export const temperatureAtDensity = explicit({
  id: "fluids/temperature-at-density",
  title: "Temperature of air from its density",
  inputs: {
    p: { symbol: "p", kind: "pressure" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "T", kind: "temperature" },
  expression: "p / (R_m * rho)",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  accuracy: "0.3 % to 0.6 MPa, 280 to 500 K",
  compute: ({ p, R_m, rho }) => p / (R_m * rho),
});
