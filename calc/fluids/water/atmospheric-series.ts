import { REFERENCE_R as R } from "./water-constants.ts";

/*
 * IAPWS SR6-08(2011), table 1: coefficients of powers of α = 10 K / (593 K - T) and β = 10 K / (T - 232 K). Each sum is
 * written out as a polynomial, since a solver calls it at every step.
 */
const a1 = -1.661470539e5;
const a2 = 2.70878164e6;
const a3 = -1.557191544e8;
const a5 = 1.93763157e-2;
const a6 = 6.74458446e3;
const a7 = -2.22521604e5;
const a8 = 1.00231247e8;
const a9 = -1.63552118e9;
const a10 = 8.32299658e9;
const b1 = -8.237426256e-1;
const b2 = 1.908956353;
const b3 = -2.017597384;
const b4 = 8.546361348e-1;
const b5 = 5.78545292e-3;
const b6 = -1.53195665e-2;
const b7 = 3.11337859e-2;
const b8 = -4.23546241e-2;
const b9 = 3.38713507e-2;
const b10 = -1.19946761e-2;
const c1 = -2.452093414e2;
const c3 = -8.983025854;

const T_STAR = 10;
/** The pressure of the formulation, Pa. */
const P = 1e5;

const alphaOf = (T: number) => T_STAR / (593 - T);
const betaOf = (T: number) => T_STAR / (T - 232);

/** Specific volume of liquid water at 0.1 MPa, m³/kg, at T in K. */
export function atmosphericVolume(T: number): number {
  const a = alphaOf(T);
  const b = betaOf(T);
  const alphas = a ** 4 * (a6 + a * (a7 + a * a * (a8 + a * (a9 + a * a10))));
  const betas = b * (b5 + b * (b6 + b * (b7 + b * (b8 + b * (b9 + b * b10)))));
  return ((R * T_STAR) / P) * (a5 + alphas + betas);
}

/** Heat capacity of liquid water at 0.1 MPa, J/(kg K), at T in K. */
export function atmosphericHeatCapacity(T: number): number {
  const a = alphaOf(T);
  const b = betaOf(T);
  const alphas = a ** 6 * (20 * a1 + a * (30 * a2 + a * a * (56 * a3)));
  const betas = b ** 4 * (6 * b1 + b * (12 * b2 + b * (20 * b3 + b * (30 * b4))));
  return -R * (c3 + (T / T_STAR) * (alphas + betas));
}

/**
 * Enthalpy of liquid water at 0.1 MPa, J/kg, at T in K: g + T s, in which the logarithm and one coefficient cancel.
 * Counted as the IAPWS does, from the liquid at the triple point.
 */
export function atmosphericEnthalpy(T: number): number {
  const tau = T / T_STAR;
  const a = alphaOf(T);
  const b = betaOf(T);
  const ta = tau * a;
  const tb = tau * b;
  const alphas = a ** 4 * (a1 * (1 - 4 * ta) + a * (a2 * (1 - 5 * ta) + a * a * (a3 * (1 - 7 * ta))));
  const betas =
    b * b * (b1 * (1 + 2 * tb) + b * (b2 * (1 + 3 * tb) + b * (b3 * (1 + 4 * tb) + b * (b4 * (1 + 5 * tb)))));
  return R * T_STAR * (c1 - c3 * tau + alphas + betas);
}
