import { decayArea } from "../../numerics/decay-area.ts";

/** From here on e^(-x) is next to too small for a number, and a sum has to start at a later term. */
const LARGE = 700;

/** Up to this term e^(-x) x^n/n! adds up to less than a number can show beside 1. */
const firstTerm = (x: number): number => (x < LARGE ? 0 : Math.floor(x - 25 * Math.sqrt(x)));

/** e^(-x) x^n/n! where both are large, by Stirling's series. */
function term(x: number, n: number): number {
  const d = (x - n) / n;
  const series = (1 / 12 - (1 / 360 - 1 / (1260 * n * n)) / (n * n)) / n;
  return Math.exp(n * (Math.log1p(d) - d) - series) / Math.sqrt(2 * Math.PI * n);
}

/**
 * The sum of G_n(s) G_n(l)/s over n from 0 on, with G_n(x) = 1 - e^(-x) (1 + x + ... + x^n/n!), for 0 <= s <= l.
 *
 * Takes about s + 10 sqrt(s) terms. G_0 is taken as a whole and the later ones by subtraction; what that loses is small
 * beside G_0, so that small arguments keep their digits, and s = 0 needs no case of its own.
 */
export function poissonSum(s: number, l: number): number {
  const later = firstTerm(l);
  let n = firstTerm(s);
  let g = n === 0 ? decayArea(s, 1) : 1 / s;
  let G = later === 0 ? -Math.expm1(-l) : 1;
  // What is taken off next.
  let t = n === 0 ? Math.exp(-s) : term(s, n + 1) / s;
  let T = later === 0 ? l * Math.exp(-l) : later <= n + 1 ? term(l, n + 1) : 0;
  let sum = n * g;
  for (;;) {
    sum += g * G;
    g -= t;
    G -= T;
    n++;
    const next = n + 1;
    t *= s / next;
    T = next === later ? term(l, next) : T * (l / next);
    if (n > s && t <= 1e-17 * sum) return sum;
  }
}
