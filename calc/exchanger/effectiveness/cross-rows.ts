import { decayArea } from "../../numerics/decay-area.ts";
import { refuse } from "../../quantity/accept.ts";
import { property } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/** The same as a plain function, for a whole number of rows. */
export function rowsEffectiveness(NTU: number, R: number, rows: number): number {
  const share = passShareOf(NTU, rows);
  const c = rows * R * share;
  let sum = rows * decayArea(c, 1);
  let u = Math.exp(-c);
  let first = 1;
  for (let j = 1; j < rows; j++) {
    first *= share;
    // The chance that the j-th of the rows so far that take their share is the m-th row, for all rows behind it.
    let chance = first;
    let behind = 0;
    for (let m = j; m < rows; m++) {
      behind += (rows - m) * chance;
      chance *= ((1 - share) * m) / (m - j + 1);
    }
    sum -= u * behind;
    u *= c / (j + 1);
  }
  return share * sum;
}

/**
 * Temperature effectiveness (0 to 1) of N_r tube rows one behind the other, whose water enters and leaves side by side:
 * air unmixed, the water of each row mixed. NTU and R on the air; N_r a whole number, otherwise a DomainError.
 *
 * @example crossRows.compute({ NTU: 2, R: 0.5, N_r: 3 }) // 0.7290
 */
export const crossRows = property({
  id: "exchanger/effectiveness/cross-rows",
  title: "Effectiveness across, tube rows fed side by side",
  inputs: { ...onTheAir.inputs, N_r: { symbol: "N_r", kind: "ratio" } },
  result: { symbol: "P_rows", kind: "fraction" },
  name: "P_rows",
  tex: String.raw`\begin{gathered} P_\mathrm{rows} = \frac{1 - S e^{-c}}{R} \\ S = 1 + \sum_{j=1}^{N_\mathrm{r}-1} a_j \frac{c^j}{j!} \\ a_j = \frac{1}{N_\mathrm{r}} \sum_{m=j}^{N_\mathrm{r}-1} (N_\mathrm{r} - m)\, b_{jm} \\ b_{jm} = \binom{m-1}{j-1}\, \Gamma^j (1-\Gamma)^{m-j} \\ c = N_\mathrm{r}\,\Gamma R \\ \Gamma = 1 - e^{-\mathrm{NTU}/N_\mathrm{r}} \end{gathered}`,
  sources: [
    { key: "schedwill-1968", where: "formulas for two, three and four rows", standing: "from memory" },
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, equations of one row, applied row by row",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, R, N_r }) => {
    refuse(
      !Number.isInteger(N_r) || N_r < 1,
      "N_r",
      "The number of tube rows has to be a whole number, one or more.",
    );
    return rowsEffectiveness(NTU, R, N_r);
  },
});
