import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placesOf } from "../../../calc/charge/counterfactual-credit.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

const credits = (count: number, value: (set: number) => number) =>
  Array.from({ length: count }, (_, i) => {
    const places = placesOf(count, i, value);
    return places.reduce((sum, place) => sum + place.with - place.without, 0) / count;
  });

/** All orders of 0, 1, … count - 1. */
function ordersOf(count: number): number[][] {
  if (count === 0) return [[]];
  return ordersOf(count - 1).flatMap((order) =>
    Array.from({ length: count }, (_, at) => [...order.slice(0, at), count - 1, ...order.slice(at)]),
  );
}

/** The mean of what each adds when all are fitted one after the other, over every order, as the words say it. */
function bruteForce(count: number, value: (set: number) => number): number[] {
  const orders = ordersOf(count);
  const sums = new Array<number>(count).fill(0);
  for (const order of orders) {
    let set = 0;
    for (const i of order) {
      const next = set + 2 ** i;
      sums[i] = (sums[i] ?? 0) + value(next) - value(set);
      set = next;
    }
  }
  return sums.map((sum) => sum / orders.length);
}

const games = fc.integer({ min: 1, max: 5 }).chain((count) =>
  fc.record({
    count: fc.constant(count),
    values: fc.array(fc.double({ min: 0.3, max: 6, noNaN: true }), {
      minLength: 2 ** count,
      maxLength: 2 ** count,
    }),
  }),
);

test("it is the mean over every order of fitting", () => {
  expect(ordersOf(4)).toHaveLength(24);
  fc.assert(
    fc.property(games, ({ count, values }) => {
      const value = (set: number) => values[set] ?? Number.NaN;
      const expected = bruteForce(count, value);
      for (const [i, credit] of credits(count, value).entries())
        expect(credit).toBeCloseTo(expected[i] ?? 0, 11);
    }),
    runs,
  );
});

test("credits add up to what all gain together", () => {
  fc.assert(
    fc.property(games, ({ count, values }) => {
      const value = (set: number) => values[set] ?? Number.NaN;
      const sum = credits(count, value).reduce((a, b) => a + b, 0);
      expect(Math.abs(sum - (value(2 ** count - 1) - value(0)))).toBeLessThan(1e-12);
    }),
    runs,
  );
});

test("who changes nothing gets nothing, and takes nothing from the others", () => {
  fc.assert(
    fc.property(games, ({ count, values }) => {
      const value = (set: number) => values[set] ?? Number.NaN;
      const idle = (set: number) => value(set % 2 ** count);
      const [last] = credits(count + 1, idle).slice(-1);
      expect(last).toBe(0);
      const with_ = credits(count + 1, idle);
      for (const [i, credit] of credits(count, value).entries()) expect(with_[i]).toBeCloseTo(credit, 11);
    }),
    runs,
  );
});

test("names do not matter: two that change places change credits", () => {
  fc.assert(
    fc.property(games, ({ count, values }) => {
      if (count < 2) return;
      const value = (set: number) => values[set] ?? Number.NaN;
      const swapped = (set: number) => value(set - (set % 4) + ([0, 2, 1, 3][set % 4] ?? 0));
      const [a, b] = credits(count, value);
      const [c, d] = credits(count, swapped);
      expect([c, d].map((x) => x?.toFixed(11))).toEqual([b, a].map((x) => x?.toFixed(11)));
    }),
    runs,
  );
});

describe("games that are well known", () => {
  test("one right glove and two left ones", () => {
    const pairs = (set: number) => (set % 2 === 1 && set > 1 ? 1 : 0);
    const [right, left, other] = credits(3, pairs);
    expect(right).toBeCloseTo(2 / 3, 14);
    expect([left, other]).toEqual([expect.closeTo(1 / 6, 14), expect.closeTo(1 / 6, 14)]);
  });

  test("a runway for airplanes of three lengths: each part is shared by those who need it", () => {
    const lengths = [1, 2, 4];
    const runway = (set: number) =>
      Math.max(0, ...lengths.map((length, i) => ((set >> i) % 2 === 1 ? length : 0)));
    const [short, middle, long] = credits(3, runway);
    expect(short).toBeCloseTo(1 / 3, 14);
    expect(middle).toBeCloseTo(1 / 3 + 1 / 2, 14);
    expect(long).toBeCloseTo(1 / 3 + 1 / 2 + 2, 14);
  });
});
