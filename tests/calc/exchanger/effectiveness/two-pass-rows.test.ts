import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangementOf } from "../../../../calc/exchanger/arrangements.ts";
import { counterflow } from "../../../../calc/exchanger/effectiveness/counterflow.ts";
import { fieldEffectiveness } from "../../../../calc/exchanger/field/field-effectiveness.ts";
import { layouts } from "../../../../calc/exchanger/layouts.ts";
import { DomainError } from "../../../../calc/quantity/domain-error.ts";

const ids = [
  "counter-cross-2-rows",
  "counter-cross-2-rows-identical",
  "counter-cross-2-rows-inverted",
  "parallel-cross-2-rows",
  "parallel-cross-2-rows-identical",
  "parallel-cross-2-rows-inverted",
] as const;
const P = (id: (typeof ids)[number], NTU: number, R: number) =>
  arrangementOf(id).effectiveness.compute({ NTU, R });

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const someNTU = fc.oneof(
  fc.double({ min: 0.05, max: 8, noNaN: true }),
  fc.double({ min: 1e-6, max: 30, noNaN: true }),
);
const someR = fc.oneof(
  fc.double({ min: 0, max: 4, noNaN: true }),
  fc.double({ min: 1e-9, max: 20, noNaN: true }),
);

describe.each(ids)("%s", (id) => {
  it("agrees with the field also where no cooler is", () => {
    for (const [NTU, R, cells] of [
      [60, 1, 60],
      [60, 0.02, 40],
      [30, 0.4, 40],
      [20, 5, 60],
      [3, 20, 40],
    ] as const) {
      const off = P(id, NTU, R) - fieldEffectiveness(layouts[id], NTU, R, cells);
      expect(Math.abs(off), `NTU ${NTU}, R ${R}`).toBeLessThan(1e-10);
    }
  });

  it("lies between nothing and what counterflow and the smaller stream can", () => {
    fc.assert(
      fc.property(someNTU, someR, (NTU, R) => {
        const most = Math.min(counterflow.compute({ NTU, R }), 1 / Math.max(1, R));
        return P(id, NTU, R) >= 0 && P(id, NTU, R) <= most * (1 + 1e-12);
      }),
      runs,
    );
  });

  it("begins as every arrangement does: NTU - (1 + R) NTU²/2", () => {
    for (const NTU of [1e-9, 1e-6, 1e-4])
      for (const R of [0, 1e-9, 0.3, 1, 1.5, 4]) {
        const begin = NTU - ((1 + R) * NTU ** 2) / 2;
        expect(Math.abs(P(id, NTU, R) - begin)).toBeLessThan(((1 + R) * NTU) ** 3 + 3e-15 * NTU);
      }
    expect(P(id, 0, 0.5)).toBe(0);
  });

  it("is 1 - exp(-NTU) with water that does not warm, and comes to it without loss of digits", () => {
    for (const NTU of [1e-9, 0.01, 0.7, 2, 5, 30])
      for (const R of [0, 1e-300, 1e-15, 1e-12, 1e-9]) {
        const off = P(id, NTU, R) / -Math.expm1(-NTU) - 1;
        // With the air, the warmth of the water counts with its full NTU.
        expect(Math.abs(off), `NTU ${NTU}, R ${R}`).toBeLessThan(5e-13 + 2 * R * NTU);
      }
  });

  it("is smooth where the capacity rates are equal, where the heat is counted on the other stream", () => {
    for (const NTU of [0.1, 1, 3, 10, 40])
      for (const d of [1e-8, 1e-12, 1e-15])
        expect(Math.abs(P(id, NTU, 1 + d) - P(id, NTU, 1 - d))).toBeLessThan(2 * d + 1e-13);
  });

  it("does not gain by less water", () => {
    fc.assert(
      fc.property(someNTU, someR, fc.double({ min: 1, max: 3, noNaN: true }), (NTU, R, more) => {
        if (id.startsWith("parallel") && NTU * Math.max(1, R * more) > 1) return true;
        return P(id, NTU, R * more) <= P(id, NTU, R) * (1 + 1e-12);
      }),
      runs,
    );
  });

  it("is refused with the field and the bound where it cannot be computed", () => {
    for (const [NTU, R, field, bound] of [
      [-1, 1, "NTU", 0],
      [Number.NaN, 1, "NTU", undefined],
      [1, -0.1, "R", 0],
      [1, 1001, "R", 1000],
      [2001, 0.5, "NTU", 2000],
      [600, 4, "NTU", 500],
    ] as const) {
      let error: unknown;
      try {
        P(id, NTU, R);
      } catch (thrown) {
        error = thrown;
      }
      expect(error).toBeInstanceOf(DomainError);
      expect(error).toMatchObject({ field });
      expect((error as DomainError).limit?.value).toBe(bound);
    }
  });
});

describe("two passes of many channels", () => {
  it("do less with the air than against it", () => {
    fc.assert(
      fc.property(someNTU, someR, (NTU, R) =>
        ids.slice(0, 3).every((id, i) => P(ids[i + 3] as typeof id, NTU, R) <= P(id, NTU, R) * (1 + 1e-12)),
      ),
      runs,
    );
  });

  // The warmth falls along the air: warm channels that come back to cold ones' places give back less than the mean would,
  // and those that come back to their own give back more (the inequality of sums of Chebyshev).
  it("with the air give back least with channels in order, and most with nested bends", () => {
    fc.assert(
      fc.property(someNTU, someR, (NTU, R) => {
        const mixed = P("parallel-cross-2-rows", NTU, R);
        return (
          P("parallel-cross-2-rows-identical", NTU, R) >= mixed * (1 - 1e-12) &&
          P("parallel-cross-2-rows-inverted", NTU, R) <= mixed * (1 + 1e-12)
        );
      }),
      runs,
    );
  });

  it("do not lose by more surface, against the air", () => {
    fc.assert(
      fc.property(someNTU, someR, fc.double({ min: 1, max: 3, noNaN: true }), (NTU, R, more) =>
        ids.slice(0, 3).every((id) => P(id, NTU * more, R) >= P(id, NTU, R) * (1 - 1e-12)),
      ),
      runs,
    );
  });

  // With nested bends each stream turns round between the banks, so that the two may swap their parts.
  it.each(["counter-cross-2-rows-inverted", "parallel-cross-2-rows-inverted"] as const)(
    "%s: the water, seen as the air is, has R P at R NTU and 1/R",
    (id) => {
      fc.assert(
        fc.property(someNTU, fc.double({ min: 0.05, max: 20, noNaN: true }), (NTU, R) => {
          const onWater = P(id, R * NTU, 1 / R);
          return Math.abs(R * P(id, NTU, R) - onWater) <= 1e-10 * onWater;
        }),
        runs,
      );
    },
  );
});
