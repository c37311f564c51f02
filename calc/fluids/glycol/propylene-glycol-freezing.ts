import { property } from "../../relation/relation.ts";
import { mixtureRanges } from "./mixture-polynomial.ts";

/**
 * Temperature in K at which the first ice forms in a mixture of propylene glycol and water with the mass fraction x_g of glycol, 0 to
 * 0.6.
 *
 * @example propyleneGlycolFreezing.compute({ x_g: 0.5 }) // 240.96 K
 */
export const propyleneGlycolFreezing = property({
  id: "fluids/glycol/propylene-glycol-freezing",
  title: "Freezing temperature of propylene glycol in water",
  inputs: { x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "T_f", kind: "temperature" },
  name: "T_f_PG",
  tex: String.raw`\begin{gathered} \frac{T_\mathrm{f}}{\mathrm{K}} = 259.9 - 66.31\,\xi - 109.4\,\xi^2 - 228.3\,\xi^3 \\ {} - 340.9\,\xi^4 + 146.5\,\xi^5 \\ \xi = x_\mathrm{g} - 0.307031 \end{gathered}`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for propylene glycol, freezing temperature",
      standing: "open reference read",
    },
  ],
  ranges: [mixtureRanges("propylene glycol")[0]],
  compute: ({ x_g }) => {
    const X = x_g - 0.307031;
    return 259.9 + X * (-66.31 + X * (-109.4 + X * (-228.3 + X * (-340.9 + X * 146.5))));
  },
});
