import { type PowerTerm, powerSum } from "../../numerics/power-sum.ts";
import type { Phase } from "./phase.ts";
import { INDUSTRIAL_R } from "./water-constants.ts";

// IAPWS-IF97, table 10: exponent of τ and coefficient of the ideal gas, which has the logarithm of π besides.
const idealTerms: readonly PowerTerm[] = [
  [0, 0, -0.96927686500217e1],
  [0, 1, 0.10086655968018e2],
  [0, -5, -0.5608791128302e-2],
  [0, -4, 0.71452738081455e-1],
  [0, -3, -0.40710498223928],
  [0, -2, 0.1424081917144e1],
  [0, -1, -0.4383951131945e1],
  [0, 2, -0.28408632460772],
  [0, 3, 0.21268463753307e-1],
];

// IAPWS-IF97, table 11: exponents of π and of τ - 0.5, and the coefficient.
const terms: readonly PowerTerm[] = [
  [1, 0, -1.7731742473213e-3],
  [1, 1, -1.7834862292358e-2],
  [1, 2, -4.5996013696365e-2],
  [1, 3, -5.7581259083432e-2],
  [1, 6, -5.032527872793e-2],
  [2, 1, -3.3032641670203e-5],
  [2, 2, -1.8948987516315e-4],
  [2, 4, -3.9392777243355e-3],
  [2, 7, -4.3797295650573e-2],
  [2, 36, -2.6674547914087e-5],
  [3, 0, 2.0481737692309e-8],
  [3, 1, 4.3870667284435e-7],
  [3, 3, -3.227767723857e-5],
  [3, 6, -1.5033924542148e-3],
  [3, 35, -4.0668253562649e-2],
  [4, 1, -7.8847309559367e-10],
  [4, 2, 1.2790717852285e-8],
  [4, 3, 4.8225372718507e-7],
  [5, 7, 2.2922076337661e-6],
  [6, 3, -1.6714766451061e-11],
  [6, 16, -2.1171472321355e-3],
  [6, 35, -2.3895741934104e1],
  [7, 0, -5.905956432427e-18],
  [7, 11, -1.2621808899101e-6],
  [7, 25, -3.8946842435739e-2],
  [8, 8, 1.1256211360459e-11],
  [8, 36, -8.2311340897998],
  [9, 13, 1.9809712802088e-8],
  [10, 4, 1.0406965210174e-19],
  [10, 10, -1.0234747095929e-13],
  [10, 14, -1.0018179379511e-9],
  [16, 29, -8.0882908646985e-11],
  [16, 50, 1.0693031879409e-1],
  [18, 57, -3.3662250574171e-1],
  [20, 20, 8.9185845355421e-25],
  [20, 35, 3.0629316876232e-13],
  [20, 48, -4.2002467698208e-6],
  [21, 21, -5.9056029685639e-26],
  [22, 53, 3.7826947613457e-6],
  [23, 39, -1.2768608934681e-15],
  [24, 26, 7.3087610595061e-29],
  [24, 40, 5.5414715350778e-17],
  [24, 58, -9.436970724121e-7],
];

const T_STAR = 540;
const P_STAR = 1e6;

const ideal = powerSum(idealTerms);
const idealByY = powerSum(idealTerms, 0, 1);
const idealByYY = powerSum(idealTerms, 0, 2);
const rest = powerSum(terms);
const restByX = powerSum(terms, 1);
const restByXX = powerSum(terms, 2);
const restByY = powerSum(terms, 0, 1);
const restByYY = powerSum(terms, 0, 2);
const restByXY = powerSum(terms, 1, 1);

/** The ideal gas hangs on the pressure only through the logarithm. */
const ONE = 1;

const gamma = (pi: number, tau: number) => Math.log(pi) + ideal(ONE, tau) + rest(pi, tau - 0.5);
const byPi = (pi: number, tau: number) => 1 / pi + restByX(pi, tau - 0.5);
const byPiPi = (pi: number, tau: number) => restByXX(pi, tau - 0.5) - 1 / pi ** 2;
const byPiTau = (pi: number, tau: number) => restByXY(pi, tau - 0.5);
const byTau = (pi: number, tau: number) => idealByY(ONE, tau) + restByY(pi, tau - 0.5);
const byTauTau = (pi: number, tau: number) => idealByYY(ONE, tau) + restByYY(pi, tau - 0.5);

/**
 * Steam from its Gibbs function g(T, p) = R T γ(π, τ), the ideal gas and what is added to it.
 *
 * IAPWS-IF97, region 2: 273.15 to 1073.15 K, up to the saturation pressure, above 623.15 K up to the boundary with
 * region 3. Enthalpy and entropy count from the liquid at the triple point, as in region 1.
 */
export const regionTwo: Phase = {
  g: (T, p) => INDUSTRIAL_R * T * gamma(p / P_STAR, T_STAR / T),
  v: (T, p) => (INDUSTRIAL_R * T * byPi(p / P_STAR, T_STAR / T)) / P_STAR,
  h: (T, p) => INDUSTRIAL_R * T_STAR * byTau(p / P_STAR, T_STAR / T),
  s: (T, p) => {
    const tau = T_STAR / T;
    return INDUSTRIAL_R * (tau * byTau(p / P_STAR, tau) - gamma(p / P_STAR, tau));
  },
  cp: (T, p) => -INDUSTRIAL_R * (T_STAR / T) ** 2 * byTauTau(p / P_STAR, T_STAR / T),
  vByT: (T, p) => {
    const tau = T_STAR / T;
    return (INDUSTRIAL_R / P_STAR) * (byPi(p / P_STAR, tau) - tau * byPiTau(p / P_STAR, tau));
  },
  vByP: (T, p) => (INDUSTRIAL_R * T * byPiPi(p / P_STAR, T_STAR / T)) / P_STAR ** 2,
};
