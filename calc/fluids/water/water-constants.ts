import { CRITICAL_TEMPERATURE } from "../saturation-over-water.ts";

/** Critical point of water in the releases of the IAPWS: K, Pa, kg/m³. */
export const critical = { T: CRITICAL_TEMPERATURE, p: 22.064e6, rho: 322 } as const;

/** Gas constant of water in the reference equation of 1995 and what is built on it, J/(kg K). */
export const REFERENCE_R = 461.51805;

/** Gas constant of water in the industrial formulation of 1997, J/(kg K). */
export const INDUSTRIAL_R = 461.526;
