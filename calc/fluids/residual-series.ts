import { T_CRITICAL } from "./dilute-air.ts";

/** N τ^t δ^d exp(-δ^l), without the exponential where l is 0. */
export type ResidualTerm = readonly [N: number, t: number, d: number, l: number];

/** Critical density of air in Lemmon and Jacobsen 2004, 10.4477 mol/l at 28.9586 g/mol, kg/m³. */
const RHO_CRITICAL = 10.4477 * 28.9586;

/** The sum over the terms at T in K and the density of dry air in kg/m³; 1e-6 Pa s or 1e-3 W/(m K). */
export function residualSeries(terms: readonly ResidualTerm[], T: number, rho: number): number {
  const tau = T_CRITICAL / T;
  const delta = rho / RHO_CRITICAL;
  return terms.reduce(
    (sum, [N, t, d, l]) => sum + N * tau ** t * delta ** d * (l === 0 ? 1 : Math.exp(-(delta ** l))),
    0,
  );
}
