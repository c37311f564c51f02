import { property } from "../relation/relation.ts";

/** Critical point of water, K: above it there is no vapour pressure. */
export const CRITICAL_TEMPERATURE = 647.096;

// IAPWS-IF97, region 4, table 34.
const n1 = 0.11670521452767e4;
const n2 = -0.72421316703206e6;
const n3 = -0.17073846940092e2;
const n4 = 0.1202082470247e5;
const n5 = -0.32325550322333e7;
const n6 = 0.1491510861353e2;
const n7 = -0.48232657361591e4;
const n8 = 0.40511340542057e6;
const n9 = -0.23855557567849;
const n10 = 0.65017534844798e3;

/** Saturation temperature in K at `p` Pa: the same equation solved for the temperature (equation 31). */
export function ifNinetySevenTemperature(p: number): number {
  const b = (p / 1e6) ** 0.25;
  const E = b * b + n3 * b + n6;
  const F = n1 * b * b + n4 * b + n7;
  const G = n2 * b * b + n5 * b + n8;
  const D = (2 * G) / (-F - Math.sqrt(F * F - 4 * E * G));
  return (n10 + D - Math.sqrt((n10 + D) ** 2 - 4 * (n9 + n10 * D))) / 2;
}

/**
 * Vapour pressure of liquid water, Pa, at T in K.
 *
 * Holds from 273.15 K to the critical point at 647.096 K, where the equation ends. Source: IAPWS-IF97, equation 30.
 *
 * @example saturationOverWater.compute({ T: 300 }) // 3536.58941 Pa
 */
export const saturationOverWater = property({
  id: "fluids/saturation-over-water",
  title: "Vapour pressure over liquid water",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "p_ws_l", kind: "pressure" },
  name: "p_ws_l",
  tex: String.raw`\begin{gathered} p_{\mathrm{ws},\ell} = \left(\frac{2C}{-B + \sqrt{B^2 - 4AC}}\right)^{4} \mathrm{MPa} \\ A = \vartheta^2 + n_1\vartheta + n_2 \\ B = n_3\vartheta^2 + n_4\vartheta + n_5 \\ C = n_6\vartheta^2 + n_7\vartheta + n_8 \\ \vartheta = T + \frac{n_9}{T - n_{10}} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 4, equation 30, table 34", standing: "open reference read" }],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: CRITICAL_TEMPERATURE,
      says: "The equation for the vapour pressure over water holds between the freezing point and the critical point only, and this is past the bound.",
    },
  ],
  compute: ({ T }) => {
    const t = T + n9 / (T - n10);
    const A = t * t + n1 * t + n2;
    const B = n3 * t * t + n4 * t + n5;
    const C = n6 * t * t + n7 * t + n8;
    return ((2 * C) / (-B + Math.sqrt(B * B - 4 * A * C))) ** 4 * 1e6;
  },
});
