import { explicit } from "../relation/relation.ts";

/**
 * Viscosity of a liquid over that of fresh water at the same temperature, both in Pa s.
 *
 * @example viscosityRatio.compute({ mu: 3.693e-3, mu_w: 1.0016e-3 }) // 3.6871
 */
export const viscosityRatio = explicit({
  id: "fluids/viscosity-ratio",
  title: "Viscosity, against fresh water",
  inputs: { mu: { symbol: "mu", kind: "viscosity" }, mu_w: { symbol: "mu_w", kind: "viscosity" } },
  result: { symbol: "X_mu", kind: "ratio" },
  expression: "mu / mu_w",
  sources: [{ key: "incropera-dewitt", where: "dynamic viscosity", standing: "derived here" }],
  compute: ({ mu, mu_w }) => mu / mu_w,
});
