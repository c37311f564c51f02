/** How often a function runs in a second: the best of five rounds of so many milliseconds each, after a warm-up. */
export function perSecond(run: (i: number) => unknown, milliseconds = 200): number {
  let best = 0;
  for (let round = -1; round < 5; round++) {
    const start = performance.now();
    let count = 0;
    let elapsed = 0;
    while (elapsed < milliseconds) {
      for (let i = 0; i < 20; i++) run(count + i);
      count += 20;
      elapsed = performance.now() - start;
    }
    if (round >= 0) best = Math.max(best, (count / elapsed) * 1000);
  }
  return best;
}

/** How many times as fast one is as the other, in two figures. */
export const times = (ours: number, theirs: number) => `${Number((ours / theirs).toPrecision(2))} times`;
