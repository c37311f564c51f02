import { refuse } from "../quantity/accept.ts";
import { implicit } from "../relation/relation.ts";

/** Newton stops when a step is below this part of the root of 1/f, and gives up after so many. */
const TOLERANCE = 1e-14;
const STEPS = 60;

/** Newton in x = 1/sqrt(f) on x + 2 lg(e/3.7 + 2.51 x/Re), which rises everywhere and bends one way. */
function solved(Re: number, e: number): number {
  refuse(
    e >= 3.7,
    "k_s",
    "The roughness is larger than the pipe leaves room for. It has to be a small part of the bore.",
  );
  const scale = 2 / Math.LN10;
  let x = 1;
  for (let i = 0; i < STEPS; i++) {
    const inside = e / 3.7 + (2.51 * x) / Re;
    const step = (x + scale * Math.log(inside)) / (1 + (scale * 2.51) / (Re * inside));
    x -= step;
    if (!(x > 0)) x = Number.EPSILON;
    else if (Math.abs(step) < TOLERANCE * x) break;
  }
  return 1 / x ** 2;
}

/**
 * Darcy friction factor of turbulent flow in a round pipe, roughness k_s and bore d in m: the implicit formula behind the usual
 * charts, solved to the last digits. Throws a DomainError naming k_s where the roughness is as large as the pipe.
 *
 * @example turbulentFrictionFactor.compute({ Re: 1e5, k_s: 0.0076e-3, d: 0.076 }) // 0.018514
 */
export const turbulentFrictionFactor = implicit({
  id: "flow/turbulent-friction-factor",
  title: "Friction factor of turbulent flow",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    k_s: { symbol: "k_s", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "f", kind: "ratio" },
  residual: "1 / sqrt(f) - (-2 * log(k_s / (3.7 * d) + 2.51 / (Re * sqrt(f))) / log(10))",
  unknown: "f",
  sources: [
    {
      key: "colebrook-1939",
      where: "formula for the transition between smooth and rough pipes",
      standing: "from memory",
    },
  ],
  ranges: [{ input: "Re", from: 4000, to: 1e8, says: "The formula is for turbulent flow within the bound." }],
  compute: ({ Re, k_s, d }) => solved(Re, k_s / d),
});
