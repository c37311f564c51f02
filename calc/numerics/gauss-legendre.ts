/** Places between 0 and 1, in rising order and alike from both ends, and what each counts; the weights add up to 1. */
export interface GaussRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

const rules: GaussRule[] = [];

/**
 * Gauss's rule of `count` points for integrals from 0 to 1: exact for polynomials up to the power 2 count - 1.
 *
 * Each rule is computed once and kept; to about 1e-15. Throws a RangeError where `count` is no whole number from one on.
 *
 * @example gaussLegendre(2).nodes[0] // 0.2113
 */
export function gaussLegendre(count: number): GaussRule {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`a rule has no ${count} points`);
  const known = rules[count];
  if (known) return known;
  const rule = { nodes: new Float64Array(count), weights: new Float64Array(count) };
  for (let i = 0; 2 * i < count; i++) {
    const { z, slope } = rootOfLegendre(count, i);
    const opposite = count - 1 - i;
    rule.nodes[i] = (1 - z) / 2;
    rule.nodes[opposite] = (1 + z) / 2;
    rule.weights[i] = rule.weights[opposite] = 1 / ((1 - z * z) * slope * slope);
  }
  rules[count] = rule;
  return rule;
}

/** The root number `i` of the Legendre polynomial, counted from 1 downwards, and the slope there, by Newton's method. */
function rootOfLegendre(degree: number, i: number): { readonly z: number; readonly slope: number } {
  let z = 2 * i + 1 === degree ? 0 : Math.cos((Math.PI * (i + 0.75)) / (degree + 0.5));
  for (let isThere = false; ; ) {
    let value = 1;
    let before = 0;
    for (let k = 1; k <= degree; k++) {
      const next = ((2 * k - 1) * z * value - (k - 1) * before) / k;
      before = value;
      value = next;
    }
    const slope = (degree * (before - z * value)) / (1 - z * z);
    if (isThere) return { z, slope };
    const step = value / slope;
    z -= step;
    // Each step squares what is missing, so that after one this small nothing is.
    isThere = Math.abs(step) < 1e-9;
  }
}
