import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";
import { type UnevenFlowGiven, unevenFlow } from "../../../calc/exchanger/uneven-flow.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const cooler = {
  arrangement: "counter-cross-2",
  NTU: 1.58,
  R: 0.094,
  T_2: 458.15,
  T_w_in: 295.15,
  s_a: 0.46,
  n_h: 0.5,
  n_p: 1.8,
} as const;

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const any = fc.record({
  arrangement: fc.constantFrom(...arrangements.map(({ id }) => id)),
  NTU: number(0.1, 6),
  R: number(0, 1.5),
  T_2: number(320, 500),
  T_w_in: number(275, 315),
  s_a: number(0, 1),
  n_h: number(0, 0.9),
  n_p: number(1, 2),
});

describe("even air and a clean face", () => {
  test.each([
    ["masked", { x_b: 0 }],
    ["halves", { omega_1: 1 }],
    ["thirds", { omega_1: 1, omega_2: 1 }],
  ] as const)("%s by nothing changes nothing", (wrong, change) => {
    fc.assert(
      fc.property(any, (given) => {
        const found = unevenFlow({ ...given, wrong, ...change });
        expect(found.P_u).toBeCloseTo(found.P, 12);
        expect(found.Delta_T).toBeCloseTo(0, 9);
        expect(found.Phi).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });
});

describe("uneven air", () => {
  // More air through a part cools a smaller part of it: what the part takes up bends down as its air grows.
  const straight = ["counterflow", "cross-unmixed", "cross-one-row", "counter-cross-2", "counter-cross-3"];

  test("never makes a cooler better where the heat of a part bends down with its air", () => {
    fc.assert(
      fc.property(
        any,
        fc.constantFrom(...straight),
        number(0.1, 1.9),
        number(0.1, 0.9),
        (given, arrangement, omega_1, part) => {
          const omega_2 = 0.05 + part * (2.9 - omega_1);
          const halves = unevenFlow({ ...given, arrangement, wrong: "halves", omega_1 });
          const thirds = unevenFlow({ ...given, arrangement, wrong: "thirds", omega_1, omega_2 });
          expect(halves.P_u).toBeLessThanOrEqual(halves.P + 1e-12);
          expect(thirds.P_u).toBeLessThanOrEqual(thirds.P + 1e-12);
          expect(halves.Phi).toBeGreaterThanOrEqual(1 - 1e-12);
          expect(thirds.Phi).toBeGreaterThanOrEqual(1 - 1e-12);
        },
      ),
      runs,
    );
  });

  test("it is the same whichever half has more", () => {
    fc.assert(
      fc.property(any, number(0.1, 1.9), (given, omega_1) => {
        const one = unevenFlow({ ...given, wrong: "halves", omega_1 });
        const other = unevenFlow({ ...given, wrong: "halves", omega_1: 2 - omega_1 });
        expect(other.P_u).toBeCloseTo(one.P_u, 10);
        expect(other.Phi).toBeCloseTo(one.Phi, 10);
      }),
      runs,
    );
  });

  test("with plenty of water and all resistance outside the air it is the exponential of each part", () => {
    // By hand: 1 - exp(-NTU/omega) of each half, weighted with its air.
    const given = { ...cooler, arrangement: "counterflow", R: 0, s_a: 0, wrong: "halves" } as const;
    const of = (omega: number) => omega * (1 - Math.exp(-cooler.NTU / omega));
    expect(unevenFlow({ ...given, omega_1: 1.3 }).P_u).toBeCloseTo((of(1.3) + of(0.7)) / 2, 12);
  });

  test("losses of laminar flow and of the square, as the binomial has them", () => {
    const at = (n_p: number) => unevenFlow({ ...cooler, n_p, wrong: "halves", omega_1: 1.2 }).Phi;
    expect(at(1)).toBeCloseTo(1 + 0.2 ** 2, 12);
    expect(at(2)).toBeCloseTo(1 + 3 * 0.2 ** 2, 12);
  });
});

describe("a masked face", () => {
  test("costs the more the more is blocked, and never less than nothing", () => {
    fc.assert(
      fc.property(any, number(0, 0.8), number(0, 0.1), (given, x_b, more) => {
        const arrangement = "counter-cross-2";
        const one = unevenFlow({ ...given, arrangement, wrong: "masked", x_b });
        const two = unevenFlow({ ...given, arrangement, wrong: "masked", x_b: x_b + more });
        expect(two.P_u).toBeLessThanOrEqual(one.P_u + 1e-12);
        expect(two.Phi).toBeGreaterThanOrEqual(one.Phi);
      }),
      runs,
    );
  });

  test("says so where the water heats the air", () => {
    const trace = recording();
    const hot = unevenFlow({ ...cooler, T_w_in: 470, wrong: "masked", x_b: 0.2 }, trace);
    expect(hot.T_3).toBeGreaterThan(cooler.T_2);
    expect(trace.notes.map(({ about }) => about)).toEqual(["T_w_in"]);
  });

  test("is the same with and without trace", () => {
    const given = { ...cooler, wrong: "masked", x_b: 0.2 } as const;
    expect(unevenFlow(given, recording())).toEqual(unevenFlow(given, plain));
  });
});

test.each([
  ["NTU", { NTU: 0 }],
  ["R", { R: -1 }],
  ["T_2", { T_2: 0 }],
  ["T_w_in", { T_w_in: undefined }],
  ["s_a", { s_a: 1.2 }],
  ["n_h", { n_h: 2 }],
  ["n_p", { n_p: 0 }],
  ["x_b", { x_b: 0.95 }],
  ["omega_1", { wrong: "halves", omega_1: 0 }],
  ["omega_1", { wrong: "halves", omega_1: 2 }],
  ["omega_2", { wrong: "thirds", omega_1: 2, omega_2: 1 }],
  ["omega_1", { wrong: "thirds", omega_1: 2.95, omega_2: 0.05 }],
  ["arrangement", { arrangement: "none of them" }],
] as const)("refuses %s that cannot be", (field, change) => {
  const given = { ...cooler, wrong: "masked", x_b: 0.2, ...change } as UnevenFlowGiven;
  try {
    unevenFlow(given);
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(DomainError);
    expect((error as DomainError).field).toBe(field);
  }
});
