/** A chance that is smaller than the largest by this factor adds nothing that a number can show. */
const SMALL = 1e-18;

/**
 * The chances of 0, 1, 2, ... events, e^-mean mean^n/n!, as far as they show. Counted from the largest on and made to add up
 * to 1, so that no mean is too large for an exponential.
 */
function chancesOf(mean: number): Float64Array {
  const most = Math.floor(mean);
  // Less than SMALL comes after fewer than this.
  const chances = new Float64Array(Math.ceil(mean + 10 * Math.sqrt(mean)) + 12);
  chances[most] = 1;
  let total = 1;
  for (let n = most, chance = 1; n > 0 && chance > SMALL; n--) {
    chance *= n / mean;
    total += chance;
    chances[n - 1] = chance;
  }
  for (let n = most + 1, chance = 1; chance > SMALL; n++) {
    chance *= mean / n;
    total += chance;
    chances[n] = chance;
  }
  for (let n = 0; n < chances.length; n++) chances[n] = (chances[n] as number) / total;
  return chances;
}

/**
 * The chances of more than 0, more than 1, more than 2, ... events, where `mean` of them, 0 or more, are expected; as far as
 * they show. Summed from the small ones on, so that each keeps its figures.
 *
 * @example poissonTails(2)[0] // 0.8647
 */
export function poissonTails(mean: number): Float64Array {
  const tails = chancesOf(mean);
  let sum = 0;
  for (let n = tails.length - 1; n >= 0; n--) {
    const chance = tails[n] as number;
    tails[n] = sum;
    sum += chance;
  }
  return tails;
}

/**
 * What is to be expected of `table[n]` where n is the number of events, of which `mean`, 0 or more, are expected; `table` is
 * 0 beyond its end.
 *
 * @example poissonMean([1], 2) // 0.1353
 */
export function poissonMean(table: Float64Array, mean: number): number {
  const most = Math.floor(mean);
  const end = table.length;
  let total = 1;
  let sum = most < end ? (table[most] as number) : 0;
  for (let n = most, chance = 1; n > 0 && chance > SMALL; n--) {
    chance *= n / mean;
    total += chance;
    if (n <= end) sum += chance * (table[n - 1] as number);
  }
  for (let n = most + 1, chance = 1; chance > SMALL; n++) {
    chance *= mean / n;
    total += chance;
    if (n < end) sum += chance * (table[n] as number);
  }
  return sum / total;
}
