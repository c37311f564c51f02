import { constants } from "../constants.ts";
import { argon, carbonDioxide, type Gas, gas, nitrogen, oxygen, water } from "./nasa-gas.ts";

const { x_N2, x_O2, x_Ar, x_CO2, M_a, M_w } = constants;

export const dryAir: Gas = gas(
  [
    [x_N2.value, nitrogen],
    [x_O2.value, oxygen],
    [x_Ar.value, argon],
    [x_CO2.value, carbonDioxide],
  ],
  M_a.value,
);
export const waterVapour: Gas = gas([[1, water]], M_w.value);

/** Heat capacity of moist air, J per kg of moist air and K; `w` kg of vapour per kg of dry air. */
export const moistCp = (T: number, w: number) => (dryAir.cp(T) + w * waterVapour.cp(T)) / (1 + w);
/** Enthalpy of moist air, J per kg of moist air, zero at 0 °C for air and for vapour. */
export const moistH = (T: number, w: number) => (dryAir.h(T) + w * waterVapour.h(T)) / (1 + w);
/** Temperature part of the entropy of moist air, J per kg of moist air and K, zero at 0 °C. */
export const moistS = (T: number, w: number) => (dryAir.s(T) + w * waterVapour.s(T)) / (1 + w);

/** Newton stops when a step is below this many K, and gives up after this many steps. */
const TOLERANCE = 1e-9;
const STEPS = 50;

/**
 * The temperature in K at which moist air has the enthalpy `h`, J/kg. Newton with the heat capacity as the slope.
 * Throws an Error when the enthalpy lies below that of absolute zero.
 */
export function temperatureAtEnthalpy(h: number, w: number): number {
  let T = Math.max(constants.T_C.value + h / 1010, 100);
  for (let i = 0; i < STEPS; i++) {
    const step = (h - moistH(T, w)) / moistCp(T, w);
    T += step;
    if (Math.abs(step) < TOLERANCE) return T;
    if (!(T > 0)) break;
  }
  throw new Error(`no temperature has the enthalpy ${h} J/kg`);
}

/** The temperature in K at which the temperature part of the entropy of moist air is `s`, J/(kg K). Newton in log T. */
export function temperatureAtEntropy(s: number, w: number): number {
  let T = constants.T_C.value * Math.exp(s / 1010);
  for (let i = 0; i < STEPS; i++) {
    const next = T * Math.exp((s - moistS(T, w)) / moistCp(T, w));
    const step = next - T;
    T = next;
    if (Math.abs(step) < TOLERANCE) return T;
    if (!Number.isFinite(T)) break;
  }
  throw new Error(`no temperature has the entropy ${s} J/(kg K)`);
}
