import { property } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { poissonSum } from "./poisson-sum.ts";

/** The same as a plain function. */
export function unmixedEffectiveness(NTU: number, R: number): number {
  if (NTU === Infinity) return Math.min(1, 1 / R);
  return R <= 1 ? poissonSum(R * NTU, NTU) : poissonSum(NTU, R * NTU) / R;
}

/**
 * Temperature effectiveness (0 to 1) of one pass of water across the air, neither stream mixed; NTU and R on the air.
 *
 * Exact, for every NTU and R: the usual closed formula for it is an approximation, cross-unmixed-approximation.ts.
 *
 * @example crossUnmixed.compute({ NTU: 2, R: 0.5 }) // 0.7324
 */
export const crossUnmixed = property({
  id: "exchanger/effectiveness/cross-unmixed",
  title: "Effectiveness across, both streams unmixed",
  ...onTheAir,
  name: "P_x",
  tex: String.raw`\begin{gathered} P = P_\times(\mathrm{NTU}, R) \\ = \frac{1}{b} \sum_{n=0}^{\infty} G_n(a)\, G_n(b) \\ G_n(x) = 1 - e^{-x} \sum_{m=0}^{n} \frac{x^m}{m!} \\ a = \mathrm{NTU} \qquad b = R\,\mathrm{NTU} \end{gathered}`,
  sources: [
    { key: "mason-1955", where: "the series for both streams unmixed", standing: "from memory" },
    { key: "shah-sekulic-2003", where: "chapter 3, table of P-NTU formulas", standing: "from memory" },
  ],
  compute: ({ NTU, R }) => unmixedEffectiveness(NTU, R),
});
