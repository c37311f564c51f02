import { numerical } from "../../relation/relation.ts";

/** Eigenvalues of the developed laminar flow in a round tube, and what each carries: the first ten. */
const first: readonly (readonly [lambda: number, G: number])[] = [
  [2.7043644198825, 0.74877455508408],
  [6.6790314493466, 0.5438279562123],
  [10.673379538054, 0.46286106015471],
  [14.671078462736, 0.41541845352547],
  [18.669871864451, 0.38291918807173],
  [22.669143358837, 0.35868556589487],
  [26.668661996011, 0.33962216406769],
  [30.668323340918, 0.32406221123681],
  [34.668073822434, 0.31101407353795],
  [38.66788334686, 0.29984403768209],
];
/** More of them are not needed up to a Graetz number of 100 000. */
const MOST = 400;
/** A term that is smaller than this part of the sum ends it. */
const NEGLIGIBLE = 1e-17;

/** From the eleventh on both follow their asymptotes to nine digits. */
function eigenpair(n: number): readonly [lambda: number, G: number] {
  const known = first[n];
  if (known) return known;
  const base = 4 * n + 8 / 3;
  const lambda = base + 0.159152288 * base ** (-4 / 3);
  return [lambda, 1.01278729 * lambda ** (-1 / 3) * (1 + 0.1487 * lambda ** (-4 / 3))];
}

/**
 * Mean Nusselt number of laminar flow in a round tube whose wall has one temperature, from the Graetz number, up to 100 000: the
 * exact solution for a speed that has settled and a temperature that has not.
 *
 * @example exactLaminarNusselt.compute({ Gz: 50 }) // 5.81464
 */
export const exactLaminarNusselt = numerical({
  id: "exchanger/film/exact-laminar-nusselt",
  title: "Nusselt number of laminar flow in a tube, exact",
  inputs: { Gz: { symbol: "Gz", kind: "ratio" } },
  result: { symbol: "Nu", kind: "ratio" },
  tex: String.raw`\mathrm{Nu} = -\frac{\mathrm{Gz}}{4} \ln\Biggl(8 \sum_{n=0}^{\infty} \frac{G_n}{\lambda_n^2}\,\mathrm{e}^{-2 \lambda_n^2 / \mathrm{Gz}}\Biggr)`,
  method:
    "Sum over the eigenvalues of the problem of Graetz, the first ten tabled and the others by their asymptote.",
  sources: [
    {
      key: "shah-london-1978",
      where: "chapter V, thermal entrance of a circular duct",
      standing: "derived here",
    },
  ],
  compute: ({ Gz }) => {
    let sum = 0;
    const [lowest] = eigenpair(0);
    // Counted from the slowest term, so that the logarithm of a cold stream is not that of nothing.
    for (let n = 0; n < MOST; n++) {
      const [lambda, G] = eigenpair(n);
      const term = ((8 * G) / lambda ** 2) * Math.exp((-2 * (lambda ** 2 - lowest ** 2)) / Gz);
      sum += term;
      if (term < NEGLIGIBLE * sum) break;
    }
    return lowest ** 2 / 2 - (Gz / 4) * Math.log(sum);
  },
});
