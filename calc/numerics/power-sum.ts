/** n x^I y^J: the two exponents, whole numbers of either sign, and the coefficient. */
export type PowerTerm = readonly [I: number, J: number, n: number];

/** k (k - 1) (k - 2) …, `order` factors: what differentiating x^k `order` times puts before it. */
function fallingFactor(k: number, order: number): number {
  let product = 1;
  for (let i = 0; i < order; i++) product *= k - i;
  return product;
}

/** Room for all powers of one number between two exponents, and a function that fills it. */
function powersBetween(exponents: readonly number[]) {
  const least = Math.min(0, ...exponents);
  const most = Math.max(0, ...exponents);
  const powers = new Float64Array(most - least + 1);
  const fill = (x: number) => {
    powers[-least] = 1;
    for (let k = 1, power = 1; k <= most; k++) {
      power *= x;
      powers[k - least] = power;
    }
    if (least === 0) return;
    const inverse = 1 / x;
    for (let k = -1, power = 1; k >= least; k--) {
      power *= inverse;
      powers[k - least] = power;
    }
  };
  return { powers, fill, places: Uint8Array.from(exponents, (k) => k - least) };
}

/**
 * The function (x, y) → Σ n x^I y^J, differentiated `byX` times by x and `byY` times by y.
 *
 * Made once; a call allocates nothing and takes powers by multiplication, so that the sums of water, of 30 to 50 terms
 * with exponents up to 58, stay fast in solvers. Exponents within ±120. Infinite at zero where an exponent is negative.
 *
 * @example powerSum([[2, -1, 3]], 1)(5, 2) // 15
 */
export function powerSum(terms: readonly PowerTerm[], byX = 0, byY = 0): (x: number, y: number) => number {
  const kept = terms
    .map(([I, J, n]) => [I - byX, J - byY, n * fallingFactor(I, byX) * fallingFactor(J, byY)] as const)
    .filter(([, , n]) => n !== 0);
  const count = kept.length;
  const n = Float64Array.from(kept, ([, , n]) => n);
  const ofX = powersBetween(kept.map(([I]) => I));
  const ofY = powersBetween(kept.map(([, J]) => J));
  return (x, y) => {
    ofX.fill(x);
    ofY.fill(y);
    let sum = 0;
    for (let i = 0; i < count; i++)
      sum +=
        (n[i] as number) *
        (ofX.powers[ofX.places[i] as number] as number) *
        (ofY.powers[ofY.places[i] as number] as number);
    return sum;
  };
}
