import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type MeasuredLossGiven, measuredLoss } from "../../../calc/flow/measured-loss.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const bench = {
  readings: "one",
  m_I: 0.12,
  Delta_p_I: 1500,
  p_I: 102.8e3,
  T_in_I: 293.15,
  T_out_I: 293.15,
  n_p: 1.8,
  rho_ref: 1.2,
  m_a: 0.35,
  p_2: 260e3,
  T_2: 458.15,
  T_3: 331.93,
} as const satisfies MeasuredLossGiven;

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const states = fc.record({
  m: number(0.05, 0.35),
  p: number(90e3, 400e3),
  T_in: number(280, 480),
  T_out: number(280, 380),
});

function refusal(given: MeasuredLossGiven): DomainError {
  try {
    measuredLoss(given);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("a measured loss", () => {
  test("scaled there and back is what it was", () => {
    fc.assert(
      fc.property(states, number(1, 2), ({ m, p, T_in, T_out }, n_p) => {
        const there = measuredLoss({ ...bench, n_p, m_a: m, p_2: p, T_2: T_in, T_3: T_out });
        const back = measuredLoss({
          ...bench,
          n_p,
          m_I: m,
          Delta_p_I: there.Delta_p,
          p_I: p,
          T_in_I: T_in,
          T_out_I: T_out,
          m_a: bench.m_I,
          p_2: bench.p_I,
          T_2: bench.T_in_I,
          T_3: bench.T_out_I,
        });
        expect(back.Delta_p / bench.Delta_p_I).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test("at its own state is itself", () => {
    const { Delta_p, rho_I, rho_mean } = measuredLoss({
      ...bench,
      m_a: bench.m_I,
      p_2: bench.p_I,
      T_2: bench.T_in_I,
      T_3: bench.T_out_I,
    });
    expect(Delta_p).toBeCloseTo(bench.Delta_p_I, 6);
    expect(rho_mean).toBeCloseTo(rho_I, 9);
  });

  test("two readings of one law give its exponent back, and the same loss", () => {
    fc.assert(
      fc.property(states, number(1, 2), ({ m, p, T_in, T_out }, n_p) => {
        if (Math.abs(m / bench.m_I - 1) < 0.05) return;
        const second = measuredLoss({ ...bench, n_p, m_a: m, p_2: p, T_2: T_in, T_3: T_out });
        const two = measuredLoss({
          ...bench,
          readings: "two",
          m_II: m,
          Delta_p_II: second.Delta_p,
          p_II: p,
          T_in_II: T_in,
          T_out_II: T_out,
        });
        expect(two.n_p).toBeCloseTo(n_p, 8);
        expect(two.Delta_p / measuredLoss({ ...bench, n_p }).Delta_p).toBeCloseTo(1, 8);
      }),
      runs,
    );
  });

  test("at one density and the exponent 2 it is the square of the flow", () => {
    // So small a loss leaves the density as it is.
    const small = { ...bench, n_p: 2, Delta_p_I: 1e-3, p_2: bench.p_I, T_2: 293.15, T_3: 293.15 };
    const { Delta_p, Delta_p_square } = measuredLoss(small);
    expect(Delta_p / Delta_p_square).toBeCloseTo(1, 6);
  });

  test("twice as dense air loses half as much", () => {
    const at = (p_2: number) =>
      measuredLoss({ ...bench, Delta_p_I: 1e-3, p_2, T_2: 293.15, T_3: 293.15 }).Delta_p;
    expect(at(150e3) / at(300e3)).toBeCloseTo(2, 6);
  });

  test("is the same with and without trace, and records one search", () => {
    const trace = recording();
    expect(measuredLoss(bench, trace)).toEqual(measuredLoss(bench, plain));
    // To the wanted flow, and the square beside it.
    expect(trace.steps.filter(({ relation }) => relation === "flow/loss-at-flow")).toHaveLength(2);
  });
});

test("says so where it takes much of the pressure", () => {
  const trace = recording();
  measuredLoss({ ...bench, m_a: 1.2 }, trace);
  expect(trace.notes.map(({ about }) => about)).toEqual(["Delta_p"]);
});

describe("is refused", () => {
  test("where the loss would take all the pressure, with the flow from which on that is so", () => {
    const { field, limit } = refusal({ ...bench, m_a: 50 });
    expect(field).toBe("m_a");
    const most = limit?.value ?? Number.NaN;
    expect(measuredLoss({ ...bench, m_a: most * (1 - 1e-6) }).p_3).toBeGreaterThan(0);
    expect(refusal({ ...bench, m_a: most * (1 + 1e-6) }).field).toBe("m_a");
  });

  const two = {
    ...bench,
    readings: "two",
    m_II: 0.06,
    Delta_p_II: 430,
    p_II: 101.7e3,
    T_in_II: 293.15,
    T_out_II: 293.15,
  } as const;

  test.each([
    ["m_I", { m_I: 0 }],
    ["Delta_p_I", { Delta_p_I: 0 }],
    ["Delta_p_I", { Delta_p_I: 200e3 }],
    ["p_I", { p_I: undefined }],
    ["T_in_I", { T_in_I: 0 }],
    ["T_out_I", { T_out_I: 2000 }],
    ["n_p", { readings: "one", n_p: 3 }],
    ["rho_ref", { rho_ref: 0 }],
    ["m_a", { m_a: -1 }],
    ["p_2", { p_2: 0 }],
    ["m_II", { m_II: 0.12 }],
    ["Delta_p_II", { Delta_p_II: 1400 }],
    ["Delta_p_II", { Delta_p_II: 50 }],
  ] as const)("%s that cannot be", (field, change) => {
    expect(refusal({ ...two, ...change }).field).toBe(field);
  });

  test.each([1400, 50])("an exponent that no cooler has is named: %d Pa", (Delta_p_II) => {
    const { message, limit } = refusal({ ...two, Delta_p_II });
    // Of two readings at nearly one density and one viscosity.
    const plainly = Math.log(1500 / Delta_p_II) / Math.log(2);
    expect(limit?.kind).toBe("ratio");
    expect(Math.abs((limit?.value ?? 0) - plainly)).toBeLessThan(0.02);
    expect(message).toContain(Delta_p_II > 430 ? "as low as the bound" : "as high as the bound");
  });

  test("an exponent outside 1 to 2 is kept with a note while it may come from rough readings", () => {
    const trace = recording();
    expect(measuredLoss({ ...two, Delta_p_II: 350 }, trace).n_p).toBeGreaterThan(2);
    expect(trace.notes.map(({ about }) => about)).toContain("n_p");
  });
});
