import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";
import { saturationPressure } from "./saturation-pressure.ts";

// Hardy 1998, ITS-90 form of Greenspan 1976: coefficients in powers of the Celsius temperature.
const overWater = {
  alpha: [3.53624e-4, 2.9328363e-5, 2.6168979e-7, 8.5813609e-9],
  beta: [-10.7588, 6.3268134e-2, -2.5368934e-4, 6.3405286e-7],
} as const;
const overIce = {
  alpha: [3.64449e-4, 2.9367585e-5, 4.8874766e-7, 4.3669918e-9],
  beta: [-10.7271, 7.6215115e-2, -1.7490155e-4, 2.4668279e-6],
} as const;

type Cubic = readonly [number, number, number, number];
const cubic = (c: Cubic, t: number) => c[0] + t * (c[1] + t * (c[2] + t * c[3]));

/**
 * Enhancement factor: how much more vapour saturated air holds than the saturation pressure alone would say, because
 * air presses on the water and pulls at its molecules. T in K, p in Pa absolute.
 *
 * Right within 0.15 % to 1 MPa between 0 and 100 °C. Below 0 °C the coefficients for ice are used.
 * Source: Greenspan 1976 in the form of Hardy 1998.
 *
 * @example enhancementFactor.compute({ T: 311.15, p: 280e3 }) // 1.00927
 */
export const enhancementFactor = property({
  id: "fluids/enhancement-factor",
  title: "Enhancement factor of moist air",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "f_e", kind: "ratio" },
  name: "f_e",
  tex: String.raw`\begin{gathered} f_\mathrm{e}(T, p) = e^{\,\alpha\,a + \beta\,b} \\ a = 1 - \frac{p_\mathrm{ws}(T)}{p}, \quad b = \frac{p}{p_\mathrm{ws}(T)} - 1 \\ \alpha = \sum_{i=0}^{3} A_i\,t^i, \quad \ln\beta = \sum_{i=0}^{3} B_i\,t^i \\ t = \frac{T - T_{0\,^\circ\mathrm{C}}}{\mathrm{K}} \end{gathered}`,
  sources: [
    {
      key: "hardy-1998",
      where: "enhancement factor, coefficients over water and over ice",
      standing: "from memory",
    },
    {
      key: "greenspan-1976",
      where: "functional equation for the enhancement factor",
      standing: "from memory",
    },
  ],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 373.15,
      says: "The enhancement factor was not checked past the bound. Colder, its coefficients for ice are used; hotter, the same formula is carried on.",
    },
    {
      input: "p",
      from: 0,
      to: 1e6,
      says: "The enhancement factor was not checked at a pressure past the bound; the same formula is carried on.",
    },
  ],
  accuracy: "0.05 % to 0.4 MPa, 0.15 % to 1 MPa",
  compute: ({ T, p }) => {
    const t = T - constants.T_C.value;
    const set = T < constants.T_t.value ? overIce : overWater;
    const p_ws = saturationPressure.compute({ T });
    return Math.exp(cubic(set.alpha, t) * (1 - p_ws / p) + Math.exp(cubic(set.beta, t)) * (p / p_ws - 1));
  },
});
