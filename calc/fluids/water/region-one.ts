import { type PowerTerm, powerSum } from "../../numerics/power-sum.ts";
import type { Phase } from "./phase.ts";
import { INDUSTRIAL_R } from "./water-constants.ts";

// IAPWS-IF97, table 2: exponents of 7.1 - π and of τ - 1.222, and the coefficient.
const terms: readonly PowerTerm[] = [
  [0, -2, 0.14632971213167],
  [0, -1, -0.84548187169114],
  [0, 0, -0.3756360367204e1],
  [0, 1, 0.33855169168385e1],
  [0, 2, -0.95791963387872],
  [0, 3, 0.15772038513228],
  [0, 4, -0.16616417199501e-1],
  [0, 5, 0.81214629983568e-3],
  [1, -9, 0.28319080123804e-3],
  [1, -7, -0.60706301565874e-3],
  [1, -1, -0.18990068218419e-1],
  [1, 0, -0.32529748770505e-1],
  [1, 1, -0.21841717175414e-1],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.47184321073267e-3],
  [2, 0, -0.30001780793026e-3],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
];

const T_STAR = 1386;
const P_STAR = 16.53e6;

const sum = powerSum(terms);
const byX = powerSum(terms, 1);
const byXX = powerSum(terms, 2);
const byY = powerSum(terms, 0, 1);
const byYY = powerSum(terms, 0, 2);
const byXY = powerSum(terms, 1, 1);

const x = (p: number) => 7.1 - p / P_STAR;
const y = (T: number) => T_STAR / T - 1.222;

/**
 * Liquid water from its Gibbs function g(T, p) = R T γ(π, τ).
 *
 * IAPWS-IF97, region 1: 273.15 to 623.15 K, from the saturation pressure to 100 MPa. A little below the saturation
 * pressure it goes on smoothly, as water that should boil and does not yet. Enthalpy and entropy as the IAPWS counts
 * them: internal energy and entropy of the liquid are zero at the triple point.
 */
export const regionOne: Phase = {
  g: (T, p) => INDUSTRIAL_R * T * sum(x(p), y(T)),
  v: (T, p) => (-INDUSTRIAL_R * T * byX(x(p), y(T))) / P_STAR,
  h: (T, p) => INDUSTRIAL_R * T_STAR * byY(x(p), y(T)),
  s: (T, p) => INDUSTRIAL_R * ((T_STAR / T) * byY(x(p), y(T)) - sum(x(p), y(T))),
  cp: (T, p) => -INDUSTRIAL_R * (T_STAR / T) ** 2 * byYY(x(p), y(T)),
  vByT: (T, p) => (-INDUSTRIAL_R / P_STAR) * (byX(x(p), y(T)) - (T_STAR / T) * byXY(x(p), y(T))),
  vByP: (T, p) => (INDUSTRIAL_R * T * byXX(x(p), y(T))) / P_STAR ** 2,
};
