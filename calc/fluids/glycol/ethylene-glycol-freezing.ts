import { property } from "../../relation/relation.ts";
import { mixtureRanges } from "./mixture-polynomial.ts";

/**
 * Temperature in K at which the first ice forms in a mixture of ethylene glycol and water with the mass fraction x_g of glycol, 0 to
 * 0.6.
 *
 * @example ethyleneGlycolFreezing.compute({ x_g: 0.5 }) // 237.16 K
 */
export const ethyleneGlycolFreezing = property({
  id: "fluids/glycol/ethylene-glycol-freezing",
  title: "Freezing temperature of ethylene glycol in water",
  inputs: { x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "T_f", kind: "temperature" },
  name: "T_f_EG",
  tex: String.raw`\begin{gathered} \frac{T_\mathrm{f}}{\mathrm{K}} = 257.9 - 80.8\,\xi - 133.4\,\xi^2 - 72.93\,\xi^3 \\ {} + 100.6\,\xi^4 + 11.4\,\xi^5 \\ \xi = x_\mathrm{g} - 0.308462 \end{gathered}`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for ethylene glycol, freezing temperature",
      standing: "open reference read",
    },
  ],
  ranges: [mixtureRanges("ethylene glycol")[0]],
  compute: ({ x_g }) => {
    const X = x_g - 0.308462;
    return 257.9 + X * (-80.8 + X * (-133.4 + X * (-72.93 + X * (100.6 + X * 11.4))));
  },
});
