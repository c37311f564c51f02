/** Critical temperature of air in Lemmon and Jacobsen 2004, K. */
export const T_CRITICAL = 132.6312;

// Lemmon and Jacobsen 2004: collision integral of air, in powers of log(T/103.3 K).
const b = [0.431, -0.4623, 0.08406, 0.005341, -0.00331] as const;

/** Viscosity of dry air at vanishing pressure, Pa s, at T in K; conductivity is built on it too. */
export function diluteViscosity(T: number): number {
  const y = Math.log(T / 103.3);
  const omega = Math.exp(b[0] + y * (b[1] + y * (b[2] + y * (b[3] + y * b[4]))));
  return (0.0266958e-6 * Math.sqrt(28.9586 * T)) / (0.36 ** 2 * omega);
}
