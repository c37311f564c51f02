/** One phase of water from its Gibbs function: T in K, p in Pa, all else in SI units for each kilogram. */
export interface Phase {
  /** Gibbs function, J/kg. */
  g(T: number, p: number): number;
  /** ∂g/∂p, the specific volume, m³/kg. */
  v(T: number, p: number): number;
  /** Enthalpy, J/kg. */
  h(T: number, p: number): number;
  /** -∂g/∂T, the entropy, J/(kg K). */
  s(T: number, p: number): number;
  /** Heat capacity at constant pressure, J/(kg K). */
  cp(T: number, p: number): number;
  /** ∂v/∂T at constant pressure, m³/(kg K). */
  vByT(T: number, p: number): number;
  /** ∂v/∂p at constant temperature, m³/(kg Pa). */
  vByP(T: number, p: number): number;
}

/** Speed of sound, m/s: v / √(-(∂v/∂p)_s). Not a number where the phase would not be stable. */
export function speedOfSound(phase: Phase, T: number, p: number): number {
  const isothermal = phase.vByP(T, p);
  const isentropic = isothermal + (T * phase.vByT(T, p) ** 2) / phase.cp(T, p);
  return phase.v(T, p) / Math.sqrt(-isentropic);
}

/** Heat capacity at constant volume, J/(kg K). */
export const constantVolumeHeatCapacity = (phase: Phase, T: number, p: number): number =>
  phase.cp(T, p) + (T * phase.vByT(T, p) ** 2) / phase.vByP(T, p);
