import { constants } from "../constants.ts";

/** Coefficients a1 to a5 of c_p/R = a1 + a2 T + a3 T² + a4 T³ + a5 T⁴, T in K. */
type Coefficients = readonly [number, number, number, number, number];

interface Species {
  readonly low: Coefficients;
  readonly high: Coefficients;
}

// NASA TM-4513 (1993). The sixth and seventh coefficients only set the zeros of enthalpy and entropy; ours are elsewhere.
export const nitrogen: Species = {
  low: [3.53100528, -1.23660987e-4, -5.02999437e-7, 2.43530612e-9, -1.40881235e-12],
  high: [2.95257626, 1.39690057e-3, -4.92631691e-7, 7.86010367e-11, -4.60755321e-15],
};
export const oxygen: Species = {
  low: [3.78245636, -2.99673415e-3, 9.847302e-6, -9.68129508e-9, 3.24372836e-12],
  high: [3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14],
};
export const argon: Species = { low: [2.5, 0, 0, 0, 0], high: [2.5, 0, 0, 0, 0] };
export const carbonDioxide: Species = {
  low: [2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13],
  high: [3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14],
};
export const water: Species = {
  low: [4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12],
  high: [3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14],
};

/** Where the low set hands over to the high one, and where the high one ends, in K. */
const MIDDLE = 1000;
const TOP = 3500;

const heatCapacity = (a: Coefficients, T: number) => a[0] + T * (a[1] + T * (a[2] + T * (a[3] + T * a[4])));
const enthalpy = (a: Coefficients, T: number) =>
  T * (a[0] + T * (a[1] / 2 + T * (a[2] / 3 + T * (a[3] / 4 + (T * a[4]) / 5))));
const entropy = (a: Coefficients, T: number) =>
  a[0] * Math.log(T) + T * (a[1] + T * (a[2] / 2 + T * (a[3] / 3 + (T * a[4]) / 4)));

/** Ideal gas of fixed composition: all per kilogram, T in K. Enthalpy and entropy are zero at 0 °C. */
export interface Gas {
  /** Heat capacity at constant pressure, J/(kg K). */
  cp(T: number): number;
  /** Enthalpy, J/kg. */
  h(T: number): number;
  /** The part of entropy that depends on temperature, J/(kg K). */
  s(T: number): number;
}

/**
 * A mixture from mole fractions (or one gas, with fraction 1) and its molar mass in kg/mol.
 *
 * Between 200 and 1000 K the low set of NASA TM-4513 holds, to 3500 K the high set; h and s join without a step. Above
 * 3500 K the heat capacity stays at its last value, so that solvers never meet a falling enthalpy.
 */
export function gas(
  parts: readonly (readonly [fraction: number, species: Species])[],
  molarMass: number,
): Gas {
  const scale = constants.R_u.value / molarMass;
  const blend = (set: keyof Species) =>
    [0, 1, 2, 3, 4].map((i) =>
      parts.reduce((sum, [fraction, species]) => sum + scale * fraction * (species[set][i] ?? 0), 0),
    ) as unknown as Coefficients;
  const low = blend("low");
  const high = blend("high");
  const zero = constants.T_C.value;
  const h0 = enthalpy(low, zero);
  const s0 = entropy(low, zero);
  const hJoin = enthalpy(low, MIDDLE) - h0 - enthalpy(high, MIDDLE);
  const sJoin = entropy(low, MIDDLE) - s0 - entropy(high, MIDDLE);
  const cpTop = heatCapacity(high, TOP);
  const hTop = enthalpy(high, TOP) + hJoin;
  const sTop = entropy(high, TOP) + sJoin;
  return {
    cp: (T) => (T <= MIDDLE ? heatCapacity(low, T) : T <= TOP ? heatCapacity(high, T) : cpTop),
    h: (T) =>
      T <= MIDDLE ? enthalpy(low, T) - h0 : T <= TOP ? enthalpy(high, T) + hJoin : hTop + cpTop * (T - TOP),
    s: (T) =>
      T <= MIDDLE
        ? entropy(low, T) - s0
        : T <= TOP
          ? entropy(high, T) + sJoin
          : sTop + cpTop * Math.log(T / TOP),
  };
}
