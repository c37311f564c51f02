import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";

// IAPWS R14-08(2011), equation 6.
const a = [-21.2144006, 27.3203819, -6.1059813] as const;
const b = [1 / 300, 1.20666667, 1.70333333] as const;

const T_t = constants.T_t.value;
const p_t = constants.p_t.value;

const series = (theta: number) => a[0] * theta ** b[0] + a[1] * theta ** b[1] + a[2] * theta ** b[2];
const seriesSlope = (theta: number) =>
  a[0] * b[0] * theta ** (b[0] - 1) + a[1] * b[1] * theta ** (b[1] - 1) + a[2] * b[2] * theta ** (b[2] - 1);

/** Sublimation pressure, Pa, at T in K. */
export const overIce = (T: number) => p_t * Math.exp(series(T / T_t) / (T / T_t));

/** Slope of the logarithm of the sublimation pressure, 1/K. */
export const overIceSlope = (T: number) => {
  const theta = T / T_t;
  return (seriesSlope(theta) / theta - series(theta) / theta ** 2) / T_t;
};

/**
 * Vapour pressure of ice, Pa, at T in K. Holds from 50 K to 273.16 K. Source: IAPWS R14-08(2011), equation 6.
 *
 * @example saturationOverIce.compute({ T: 253.15 }) // 103.239 Pa
 */
export const saturationOverIce = property({
  id: "fluids/saturation-over-ice",
  title: "Vapour pressure over ice",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "p_ws_i", kind: "pressure" },
  name: "p_ws_i",
  tex: String.raw`\begin{gathered} \ln\frac{p_{\mathrm{ws,i}}}{p_\mathrm{t}} = \frac{1}{\theta}\left(a_1\theta^{b_1} + a_2\theta^{b_2} + a_3\theta^{b_3}\right) \\ \theta = T/T_\mathrm{t} \end{gathered}`,
  sources: [{ key: "iapws-r14-08", where: "equation 6", standing: "open reference read" }],
  ranges: [
    {
      input: "T",
      from: 50,
      to: 273.16,
      says: "The equation for the vapour pressure over ice does not hold past the bound.",
    },
  ],
  compute: ({ T }) => overIce(T),
});
