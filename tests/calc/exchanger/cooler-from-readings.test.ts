import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";
import { coolerFromReadings, type ReadingsGiven } from "../../../calc/exchanger/cooler-from-readings.ts";
import { rateCooler } from "../../../calc/exchanger/rate-cooler.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const celsius = (t: number) => t + 273.15;

const readings: ReadingsGiven = {
  arrangement: "counter-cross-2",
  flows: "both",
  m_a: 0.35,
  T_2: celsius(185),
  T_3: celsius(58.8),
  coolant: "water",
  p_w: 200_000,
  m_w: 0.9,
  T_w_in: celsius(22),
  T_w_out: celsius(34),
};

const anyRig = fc.record({
  arrangement: fc.constantFrom(...arrangements.map(({ id }) => id)),
  UA: fc.double({ min: 50, max: 2000, noNaN: true }),
  m_a: fc.double({ min: 0.1, max: 2, noNaN: true }),
  m_w: fc.double({ min: 0.1, max: 5, noNaN: true }),
  T_2: fc.double({ min: celsius(80), max: celsius(220), noNaN: true }),
  T_w_in: fc.double({ min: celsius(5), max: celsius(40), noNaN: true }),
});

describe("readings of a cooler that was rated", () => {
  test.each(["both", "air", "water"] as const)("give its size and flows back, with %s measured", (flows) => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const given = { ...rig, coolant: "water", p_w: 2e6 } as const;
        const rated = rateCooler(given);
        // Near the limit a hair of temperature is a mile of size, and water is liquid up to 200 °C here.
        fc.pre(rated.P < 0.97 * rated.P_most && rig.UA < (rated.UA_most ?? Infinity));
        fc.pre(rated.T_w_out < 473);
        const found = coolerFromReadings({ ...given, flows, T_3: rated.T_3, T_w_out: rated.T_w_out });
        expect((found.UA ?? 0) / rig.UA).toBeCloseTo(1, 6);
        expect(found.m_a).toBeCloseTo(rig.m_a, 7);
        expect(found.m_w).toBeCloseTo(rig.m_w, 7);
        expect(found.R).toBeCloseTo(rated.R, 7);
        expect(found.epsilon).toBeCloseTo(rated.epsilon, 7);
        if (flows === "both") expect(found.delta_Q).toBeCloseTo(0, 7);
        else expect(found.delta_Q).toBeUndefined();
      }),
    );
  });
});

// From a textbook's table: water at 28 °C has 4.18 kJ/(kg K), air near 120 °C 1.01 kJ/(kg K). By hand, so to half a per cent.
test("the heat balance is that of a hand calculation", () => {
  const { Q_a, Q_w, delta_Q, P } = coolerFromReadings(readings);
  const byHand = { air: 0.35 * 1010 * 126.2, water: 0.9 * 4180 * 12 };
  expect(Q_a / byHand.air).toBeCloseTo(1, 2);
  expect((Q_w ?? 0) / byHand.water).toBeCloseTo(1, 2);
  expect(delta_Q).toBeCloseTo(byHand.water / byHand.air - 1, 2);
  expect(P).toBeCloseTo(126.2 / 163, 12);
});

test("a balance that does not close is noted, one that does is not", () => {
  const notesOf = (change: Partial<ReadingsGiven>) => {
    const trace = recording();
    coolerFromReadings({ ...readings, ...change }, trace);
    return trace.notes.map(({ about }) => about);
  };
  expect(notesOf({})).toEqual([]);
  expect(notesOf({ m_w: 1.1 })).toEqual(["delta_Q"]);
});

test("more than swapped hoses can do leaves the size out and says what they can", () => {
  const trace = recording();
  const found = coolerFromReadings(
    { ...readings, arrangement: "parallel-cross-2", m_w: 0.12, T_w_out: celsius(105) },
    trace,
  );
  expect(found.UA).toBeUndefined();
  expect(found.NTU).toBeUndefined();
  // What the readings themselves say stays.
  expect(found.epsilon).toBeGreaterThan(0);
  expect(found.Delta_T_lm).toBeGreaterThan(0);
  const note = trace.notes.find(({ about }) => about === "P");
  expect(note?.limit).toEqual({ value: found.P_most, kind: "fraction" });
  expect(found.P).toBeGreaterThan(found.P_most);
});

describe("it refuses, and names the bound", () => {
  test.each([
    ["an outlet colder than the water", { T_3: celsius(21) }, "T_3", 22],
    ["an outlet as hot as the inlet", { T_3: celsius(185) }, "T_3", 185],
    ["water that gives off heat", { T_w_out: celsius(20) }, "T_w_out", 22],
    ["water hotter than the air that enters", { T_2: celsius(90), T_w_out: celsius(95) }, "T_w_out", 90],
  ] as const)("%s", (_, change, field, bound) => {
    try {
      coolerFromReadings({ ...readings, ...change });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe(field);
      expect(error.limit?.value).toBeCloseTo(celsius(bound), 9);
    }
  });
});
