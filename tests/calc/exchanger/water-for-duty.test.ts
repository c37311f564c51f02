import { describe, expect, test } from "vitest";
import { rateCooler } from "../../../calc/exchanger/rate-cooler.ts";
import { waterForDuty } from "../../../calc/exchanger/water-for-duty.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const celsius = (t: number) => t + 273.15;
const stated = {
  duty: "stated",
  Q: 1000,
  coolant: "water",
  p_w: 200_000,
  T_w_in: celsius(20),
  bound: "rise",
  Delta_T_w: 1,
} as const;

// Common practice, no source: a kilowatt warms 14.4 litres a minute by a kelvin.
test("a kilowatt and a kelvin", () => {
  expect((waterForDuty(stated).V_w ?? 0) * 60_000).toBeCloseTo(14.4, 1);
});

test("the flow of a cooler that was rated", () => {
  const streams = {
    m_a: 0.35,
    T_2: celsius(185),
    coolant: "water",
    p_w: 200_000,
    T_w_in: celsius(22),
  } as const;
  const { T_3, T_w_out, Q } = rateCooler({ ...streams, arrangement: "counter-cross-2", UA: 560, m_w: 0.9 });
  const found = waterForDuty({ ...streams, duty: "air", T_3, bound: "outlet", T_w_out });
  expect(found.m_w).toBeCloseTo(0.9, 8);
  expect(found.Q).toBeCloseTo(Q, 5);
});

test("a liquid with no known density has a mass flow and no volume flow", () => {
  const found = waterForDuty({ ...stated, coolant: "stated", c: 3500 });
  expect(found.m_w).toBeCloseTo(1000 / 3500, 12);
  expect(found.V_w).toBeUndefined();
});

const air = { ...stated, duty: "air", m_a: 0.35, T_2: celsius(185), T_3: celsius(50) } as const;

test("water that leaves hotter than the air does is noted", () => {
  const trace = recording();
  waterForDuty({ ...air, bound: "outlet", T_w_out: celsius(60) }, trace);
  expect(trace.notes.map(({ about, limit }) => [about, limit?.value])).toEqual([["T_w_out", celsius(50)]]);
});

describe("it refuses, and names the bound", () => {
  test.each([
    ["no rise", { bound: "rise", Delta_T_w: 0 }, "Delta_T_w", 0],
    ["an outlet no warmer than the inlet", { bound: "outlet", T_w_out: celsius(20) }, "T_w_out", celsius(20)],
    ["a rise beyond the air", { bound: "rise", Delta_T_w: 170 }, "Delta_T_w", 165],
    ["an outlet beyond the air", { bound: "outlet", T_w_out: celsius(190) }, "T_w_out", celsius(185)],
    ["air colder than its water", { T_3: celsius(15) }, "T_3", celsius(20)],
    ["air that is not cooled", { T_3: celsius(185) }, "T_3", celsius(185)],
  ] as const)("%s", (_, change, field, bound) => {
    try {
      waterForDuty({ ...air, ...change });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe(field);
      expect(error.limit?.value).toBeCloseTo(bound, 9);
    }
  });
});
