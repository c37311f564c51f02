import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type AirCapacityGiven, airCapacity } from "../../../calc/exchanger/air-capacity.ts";
import { rateMovingCooler } from "../../../calc/exchanger/moving-cooler.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { runs } from "./sample.ts";

const celsius = (t: number) => t + 273.15;

const plate: AirCapacityGiven = {
  arrangement: "counter-cross-2",
  T_2: celsius(185),
  coolant: "water",
  S: 0.035,
  p_w: 2e5,
  m_w: 0.9,
  T_w_in: celsius(22),
  UA_a_ref: 1220,
  m_a_ref: 0.35,
  n_a: 0.6,
  R_wall: 3e-6,
  water: "rectangular",
  a_ch: 0.08,
  b_ch: 0.0025,
  N_ch: 15,
  L: 0.2,
  N_p: 2,
  r_foul: 2e-4,
  T_3: celsius(50),
};

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

const coolers = fc
  .record({
    arrangement: fc.constantFrom("counter-cross-2", "counterflow", "cross-unmixed", "face-split"),
    coolant: fc.constantFrom("water", "seawater"),
    T_w_in: fc.double({ min: celsius(5), max: celsius(40), noNaN: true }),
    T_3: fc.double({ min: celsius(42), max: celsius(120), noNaN: true }),
    m_w: fc.double({ min: 0.1, max: 6, noNaN: true }),
    N_c: fc.integer({ min: 1, max: 5 }),
  })
  .map((one) => ({ ...plate, ...one }) as AirCapacityGiven & { N_c: number; m_w: number; T_w_in: number });

describe("the air that coolers carry", () => {
  test("leaves at the wanted outlet, when one of them is run forward with its part", () => {
    fc.assert(
      fc.property(coolers, (given) => {
        const { m_a, m_w_each, m_a_each, Q } = airCapacity(given);
        const forward = rateMovingCooler({ ...given, m_a: m_a / given.N_c, m_w: given.m_w / given.N_c });
        expect(forward.T_3).toBeCloseTo(given.T_3 ?? 0, 6);
        expect(m_w_each * given.N_c).toBeCloseTo(given.m_w, 9);
        expect(Q / (given.N_c * forward.Q)).toBeCloseTo(1, 8);
        expect(m_a_each).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  test("is more with colder water, with more of it, and at a warmer outlet", () => {
    fc.assert(
      fc.property(coolers, fc.double({ min: 1, max: 4, noNaN: true }), (given, by) => {
        const { m_a } = airCapacity(given);
        expect(airCapacity({ ...given, T_3: (given.T_3 ?? 0) + by }).m_a).toBeGreaterThan(m_a);
        expect(airCapacity({ ...given, m_w: given.m_w * (1 + by / 10) }).m_a).toBeGreaterThan(m_a);
        // With a power law: inside passages colder water is thicker, and may leave turbulent flow.
        const power = { ...given, water: "power", UA_w_ref: 2000, m_w_ref: 1, n_w: 0.8 } as const;
        expect(airCapacity({ ...power, T_w_in: given.T_w_in - by }).m_a).toBeGreaterThan(
          airCapacity(power).m_a,
        );
      }),
      runs,
    );
  });

  test("is as much again in a second cooler with as much water", () => {
    const one = airCapacity(plate);
    const two = airCapacity({ ...plate, N_c: 2, m_w: 1.8 });
    expect(two.m_a / one.m_a).toBeCloseTo(2, 9);
    expect(two.Q / one.Q).toBeCloseTo(2, 9);
  });

  test("with endless water is what a wall that takes all it is given leaves", () => {
    // With n_a = 0 the transfer units are UA over C_a alone, so that C_a = UA / ln((T_2 - T_w)/(T_3 - T_w)).
    const water = { water: "power", UA_w_ref: 1e6, m_w_ref: 1, n_w: 0, m_w: 5000 } as const;
    const { C_a } = airCapacity({ ...plate, ...water, R_wall: 0, n_a: 0, UA_a_ref: 1000 });
    expect(C_a / (1 / (1 / 1000 + 1e-6) / Math.log((185 - 22) / (50 - 22)))).toBeCloseTo(1, 3);
  });

  test("is refused with the side that stands against it", () => {
    const cases = [
      [{ T_3: celsius(190) }, celsius(185)],
      [{ T_3: celsius(22) }, celsius(22)],
    ] as const;
    for (const [over, bound] of cases) {
      const error = refusal(() => airCapacity({ ...plate, ...over }));
      expect(error.field).toBe("T_3");
      expect(error.limit?.value).toBeCloseTo(bound, 9);
    }
    // Where the air side conducts as much more as more air flows, less air is no help.
    const still = refusal(() => airCapacity({ ...plate, n_a: 1, T_3: celsius(25) }));
    expect(still.message).toContain("next to no air");
    const bound = still.limit?.value ?? 0;
    expect(airCapacity({ ...plate, n_a: 1, T_3: bound + 0.1 }).m_a).toBeGreaterThan(0);
    expect(refusal(() => airCapacity({ ...plate, T_3: celsius(184.9999) })).message).toContain("too much");
    expect(refusal(() => airCapacity({ ...plate, N_c: 1.5 })).field).toBe("N_c");
  });
});
