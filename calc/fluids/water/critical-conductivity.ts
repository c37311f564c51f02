import { critical, REFERENCE_R } from "./water-constants.ts";

/** State of water, SI: `rhoByP` is ∂ρ/∂p at constant temperature, `kappa` the ratio of the heat capacities. */
export interface NearCritical {
  readonly T: number;
  readonly rho: number;
  readonly c_p: number;
  readonly kappa: number;
  readonly rhoByP: number;
  readonly mu: number;
}

/**
 * ∂ρ̄/∂p̄ at 1.5 times the critical temperature, from IAPWS R15-11, equation 25 and table 6. Its last two spans of
 * density, of five: the liquid of region 1 is never lighter than 570 kg/m³.
 */
function referenceCompressibility(delta: number): number {
  const series =
    delta <= 1.863354037
      ? 1.55225959906681 +
        delta *
          (0.464621290821181 +
            delta *
              (8.93237374861479 +
                delta * (-11.0321960061126 + delta * (6.1678099933336 - delta * 0.965458722086812))))
      : 1.11999926419994 +
        delta *
          (0.595748562571649 +
            delta *
              (9.8895256507892 +
                delta * (-10.325505114704 + delta * (4.66861294457414 - delta * 0.503243546373828))));
  return 1 / series;
}

/** What nearness of the critical point adds to the thermal conductivity of liquid water, W/(m K). */
export function criticalConductivity({ T, rho, c_p, kappa, rhoByP, mu }: NearCritical): number {
  const t = T / critical.T;
  const delta = rho / critical.rho;
  const zeta = (critical.p / critical.rho) * rhoByP;
  const excess = Math.max(0, delta * (zeta - (referenceCompressibility(delta) * 1.5) / t));
  const y = (0.13 / 0.4) * (excess / 0.06) ** (0.63 / 1.239);
  // Below this the difference in the next line is lost in rounding, and its limit is zero.
  if (y < 1.2e-7) return 0;
  const Z =
    (2 / (Math.PI * y)) *
    ((1 - 1 / kappa) * Math.atan(y) +
      y / kappa -
      (1 - Math.exp(-1 / (1 / y + (y * y) / (3 * delta * delta)))));
  return ((177.8514e-3 * delta * (c_p / REFERENCE_R) * t) / (mu / 1e-6)) * Z;
}
