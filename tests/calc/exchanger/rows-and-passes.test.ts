import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { counterCross2 } from "../../../calc/exchanger/effectiveness/counter-cross-2.ts";
import { counterCross2Remixed } from "../../../calc/exchanger/effectiveness/counter-cross-2-remixed.ts";
import { counterflow } from "../../../calc/exchanger/effectiveness/counterflow.ts";
import { crossOneRow } from "../../../calc/exchanger/effectiveness/cross-one-row.ts";
import { crossRows } from "../../../calc/exchanger/effectiveness/cross-rows.ts";
import { crossUnmixed } from "../../../calc/exchanger/effectiveness/cross-unmixed.ts";
import { parallelCross2Remixed } from "../../../calc/exchanger/effectiveness/parallel-cross-2-remixed.ts";
import { parallelFlow } from "../../../calc/exchanger/effectiveness/parallel-flow.ts";
import { shell12 } from "../../../calc/exchanger/effectiveness/shell-1-2.ts";
import { shell24 } from "../../../calc/exchanger/effectiveness/shell-2-4.ts";
import { shell36 } from "../../../calc/exchanger/effectiveness/shell-3-6.ts";
import { inSeriesCounter } from "../../../calc/exchanger/in-series-counter.ts";
import { inSeriesParallel } from "../../../calc/exchanger/in-series-parallel.ts";
import { passesCounter } from "../../../calc/exchanger/passes-counter.ts";
import { passesParallel } from "../../../calc/exchanger/passes-parallel.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { runs } from "./sample.ts";

const points = [0.05, 0.5, 1.3, 3, 8].flatMap((NTU) =>
  [0.02, 0.3, 1, 1.7, 5].map((R) => ({ NTU, R, name: `NTU ${NTU}, R ${R}` })),
);

describe("rows fed side by side", () => {
  /* The closed forms for two, three and four rows in handbooks (Schedwill 1968, from memory); K is the share of one row. */
  const published: Readonly<Record<number, (K: number, R: number) => number>> = {
    2: (K, R) => 1 + R * K ** 2,
    3: (K, R) => 1 + R * K ** 2 * (3 - K) + 1.5 * R ** 2 * K ** 4,
    4: (K, R) =>
      1 + R * K ** 2 * (6 - 4 * K + K ** 2) + 4 * R ** 2 * K ** 4 * (2 - K) + (8 / 3) * R ** 3 * K ** 6,
  };

  it.each([2, 3, 4])("%d rows: the published formula", (N_r) => {
    for (const { NTU, R, name } of points) {
      const K = 1 - Math.exp(-NTU / N_r);
      const P = (1 - Math.exp(-N_r * K * R) * (published[N_r] as (K: number, R: number) => number)(K, R)) / R;
      expect(crossRows.compute({ NTU, R, N_r }), name).toBeCloseTo(P, 12);
    }
  });

  /* Another way to the same: the air that leaves, row by row, where the chance to be cooled is a binomial one. */
  function byTheAir(NTU: number, R: number, N: number): number {
    const K = 1 - Math.exp(-NTU / N);
    const c = N * R * K;
    const gamma: number[] = [1];
    let term = Math.exp(-c);
    for (let k = 1; k <= N + 1; k++) {
      gamma[k] = (gamma[k - 1] as number) - term;
      term *= c / k;
    }
    let left = (1 - K) ** N;
    let choose = 1;
    for (let k = 1; k <= N; k++) {
      choose *= (N - k + 1) / k;
      const [G, H] = [gamma[k] as number, gamma[k + 1] as number];
      left += choose * (1 - K) ** (N - k) * K ** k * (G - (k / c) * H);
    }
    return 1 - left;
  }

  it.each([1, 2, 3, 4, 6, 9])("%d rows: the sum over the air that leaves", (N_r) => {
    for (const { NTU, R, name } of points)
      expect(crossRows.compute({ NTU, R, N_r }), name).toBeCloseTo(byTheAir(NTU, R, N_r), 11);
  });

  it("one row is one row", () => {
    for (const { NTU, R } of points)
      expect(crossRows.compute({ NTU, R, N_r: 1 })).toBeCloseTo(crossOneRow.compute({ NTU, R }), 15);
  });

  it("comes to both streams unmixed with the square of the number of rows", () => {
    for (const { NTU, R, name } of points) {
      const off = (N_r: number) => crossUnmixed.compute({ NTU, R }) - crossRows.compute({ NTU, R, N_r });
      expect(Math.abs(off(400)), name).toBeLessThan(2e-5);
      expect(off(200) / off(400), name).toBeCloseTo(4, 1);
    }
  });

  it("each row more does a little more", () => {
    for (const { NTU, R, name } of points)
      for (let N_r = 1; N_r < 12; N_r++)
        expect(crossRows.compute({ NTU, R, N_r: N_r + 1 }), name).toBeGreaterThan(
          crossRows.compute({ NTU, R, N_r }),
        );
  });

  it.each([0, 2.5, -1, Infinity])("refuses %d rows", (N_r) => {
    expect(() => crossRows.compute({ NTU: 1, R: 1, N_r })).toThrow(DomainError);
  });
});

describe("units in series", () => {
  const someP = fc.double({ min: 0, max: 0.99, noNaN: true });
  const ratio = fc.double({ min: 0, max: 1, noNaN: true });

  it("two equal ones are two passes, and order does not matter", () => {
    fc.assert(
      fc.property(someP, someP, ratio, (P_A, P_B, R) => {
        const pair = inSeriesCounter.compute({ P_A, P_B, R });
        expect(pair).toBeCloseTo(inSeriesCounter.compute({ P_A: P_B, P_B: P_A, R }), 13);
        expect(inSeriesCounter.compute({ P_A, P_B: P_A, R })).toBeCloseTo(
          passesCounter.compute({ P_p: P_A, R, N_p: 2 }),
          13,
        );
        expect(inSeriesParallel.compute({ P_A, P_B: P_A, R })).toBeCloseTo(
          passesParallel.compute({ P_p: P_A, R, N_p: 2 }),
          13,
        );
      }),
      runs,
    );
  });

  it("passes against the air: (Z - 1)/(Z - R), and with equal rates N P/(1 + (N - 1) P) (textbook, from memory)", () => {
    for (const P_p of [0.01, 0.3, 0.7])
      for (const N_p of [1, 2, 3, 7]) {
        for (const R of [0, 0.2, 0.9, 1.3]) {
          const Z = ((1 - P_p * R) / (1 - P_p)) ** N_p;
          expect(passesCounter.compute({ P_p, R, N_p })).toBeCloseTo((Z - 1) / (Z - R), 12);
        }
        expect(passesCounter.compute({ P_p, R: 1, N_p })).toBeCloseTo(
          (N_p * P_p) / (1 + (N_p - 1) * P_p),
          14,
        );
      }
  });

  it("of counterflow is counterflow, of parallel flow parallel flow", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 6, noNaN: true }),
        ratio,
        fc.integer({ min: 1, max: 9 }),
        (NTU, R, N_p) => {
          const part = { NTU: NTU / N_p, R };
          const counter = passesCounter.compute({ P_p: counterflow.compute(part), R, N_p });
          const parallel = passesParallel.compute({ P_p: parallelFlow.compute(part), R, N_p });
          expect(counter).toBeCloseTo(counterflow.compute({ NTU, R }), 12);
          expect(parallel).toBeCloseTo(parallelFlow.compute({ NTU, R }), 12);
        },
      ),
      runs,
    );
  });

  it("of one row each come to counterflow, or to parallel flow, as they grow many", () => {
    for (const { NTU, R, name } of points) {
      const P_p = crossOneRow.compute({ NTU: NTU / 2000, R });
      expect(passesCounter.compute({ P_p, R, N_p: 2000 }), name).toBeCloseTo(
        counterflow.compute({ NTU, R }),
        3,
      );
      expect(passesParallel.compute({ P_p, R, N_p: 2000 }), name).toBeCloseTo(
        parallelFlow.compute({ NTU, R }),
        3,
      );
    }
  });

  it("shells in series and cores with everything mixed between are such passes", () => {
    for (const { NTU, R, name } of points) {
      const [half, third] = [NTU / 2, NTU / 3].map((part) => shell12.compute({ NTU: part, R })) as [
        number,
        number,
      ];
      expect(shell24.compute({ NTU, R }), name).toBeCloseTo(
        passesCounter.compute({ P_p: half, R, N_p: 2 }),
        14,
      );
      expect(shell36.compute({ NTU, R }), name).toBeCloseTo(
        passesCounter.compute({ P_p: third, R, N_p: 3 }),
        14,
      );
      const P_p = crossUnmixed.compute({ NTU: half === 0 ? 0 : NTU / 2, R });
      expect(counterCross2Remixed.compute({ NTU, R })).toBeCloseTo(
        passesCounter.compute({ P_p, R, N_p: 2 }),
        14,
      );
      expect(parallelCross2Remixed.compute({ NTU, R })).toBeCloseTo(
        passesParallel.compute({ P_p, R, N_p: 2 }),
        14,
      );
    }
  });

  it("air that is not mixed between keeps behind air that is, one channel a pass", () => {
    for (const { NTU, R, name } of points) {
      const P_p = crossOneRow.compute({ NTU: NTU / 2, R });
      const mixed = passesCounter.compute({ P_p, R, N_p: 2 });
      expect(Math.abs(counterCross2.compute({ NTU, R }) - mixed), name).toBeLessThan(0.03);
    }
  });

  it("does all that can be done where each unit does", () => {
    expect(inSeriesCounter.compute({ P_A: 1, P_B: 1, R: 1 })).toBe(1);
    expect(inSeriesCounter.compute({ P_A: 1, P_B: 0.3, R: 0.5 })).toBeCloseTo(1, 14);
    expect(passesCounter.compute({ P_p: 0.5, R: 2, N_p: 4 })).toBeCloseTo(0.5, 14);
  });

  it.each([
    ["P_A", () => inSeriesCounter.compute({ P_A: 0.6, P_B: 0.1, R: 2 }), 0.5],
    ["P_B", () => inSeriesCounter.compute({ P_A: 0.1, P_B: 1.1, R: 0.2 }), 1],
    ["P_p", () => passesCounter.compute({ P_p: 0.6, R: 2, N_p: 2 }), 0.5],
    ["N_p", () => passesCounter.compute({ P_p: 0.6, R: 1, N_p: 2.5 }), undefined],
    ["N_p", () => passesParallel.compute({ P_p: 0.6, R: 1, N_p: 0 }), undefined],
  ] as const)("refuses %s", (field, run, bound) => {
    try {
      run();
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
      expect((error as DomainError).limit?.value).toBe(bound);
    }
  });
});
