import { explicit } from "../../relation/relation.ts";

/**
 * Mass flow in kg/s through an orifice plate of bore d in m: discharge coefficient, expansibility, difference between the taps in Pa,
 * density before the plate in kg/m³.
 *
 * @example orificeFlow.compute({ C_D: 0.6, epsilon: 1, d: 0.03, rho: 997, Delta_p: 20e3, beta_d: 0.6 }) // 2.8708 kg/s
 */
export const orificeFlow = explicit({
  id: "circuit/orifice/orifice-flow",
  title: "Flow through an orifice plate",
  inputs: {
    C_D: { symbol: "C_D", kind: "ratio" },
    epsilon: { symbol: "epsilon_e", kind: "ratio" },
    d: { symbol: "d", kind: "length" },
    rho: { symbol: "rho", kind: "density" },
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "m", kind: "massFlow" },
  expression: "C_D * epsilon * pi / 4 * d^2 * sqrt(2 * rho * Delta_p / (1 - beta_d^4))",
  working: "si",
  sources: [{ key: "iso-5167-2", where: "mass flow", standing: "from memory" }],
  compute: ({ C_D, epsilon, d, rho, Delta_p, beta_d }) =>
    ((C_D * epsilon * Math.PI) / 4) * d ** 2 * Math.sqrt((2 * rho * Delta_p) / (1 - beta_d ** 4)),
});
