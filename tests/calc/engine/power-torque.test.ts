import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PowerTorqueGiven, powerTorque } from "../../../calc/engine/power-torque.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const engine = { V_d: 2e-3, cycle: "four-stroke", fuel: "none" } as const;

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("power and torque", () => {
  test("each pair gives the other two back", () => {
    const cycles = fc.constantFrom("four-stroke" as const, "two-stroke" as const);
    fc.assert(
      fc.property(number(1, 1000), number(1, 300), number(1e-3, 0.1), cycles, (M, n, V_d, cycle) => {
        const size = { V_d, cycle, fuel: "none" } as const;
        const start = powerTorque({ ...size, known: "torque", M, n });
        const others: readonly PowerTorqueGiven[] = [
          { ...size, known: "power", W_e: start.W_e, n },
          { ...size, known: "pressure", p_me: start.p_me, n },
          { ...size, known: "both", W_e: start.W_e, M },
        ];
        for (const given of others) {
          const found = powerTorque(given);
          expect(found.M / M).toBeCloseTo(1, 9);
          expect(found.n / n).toBeCloseTo(1, 9);
          expect(found.W_e / start.W_e).toBeCloseTo(1, 9);
          expect(found.p_me / start.p_me).toBeCloseTo(1, 9);
        }
      }),
      runs,
    );
  });

  test("a two-stroke needs half the mean pressure for the same power", () => {
    const given = { ...engine, known: "power", W_e: 50e3, n: 100 } as const;
    const two = powerTorque({ ...given, cycle: "two-stroke" });
    expect(two.p_me).toBeCloseTo(powerTorque(given).p_me / 2, 6);
  });

  test("fuel only where it is known, and its efficiency by hand", () => {
    const given = { ...engine, known: "power", W_e: 235e3, n: 6500 / 60 } as const;
    expect(powerTorque(given).b).toBeUndefined();
    expect(powerTorque(given).eta_e).toBeUndefined();
    const fuelled = powerTorque({ ...given, fuel: "flow", m_f: 0.0195833, LHV: 43e6 });
    expect((fuelled.b ?? 0) * 3.6e9).toBeCloseTo(300, 2);
    expect(fuelled.eta_e).toBeCloseTo(3600 / 300 / 43, 5);
  });

  test("is the same with and without trace", () => {
    const given = { ...engine, known: "torque", M: 345, n: 100, fuel: "flow", m_f: 0.02, LHV: 43e6 } as const;
    expect(powerTorque(given, recording())).toEqual(powerTorque(given, plain));
  });
});

test.each([
  ["n", { n: 0 }],
  ["n", { n: undefined }],
  ["M", { M: 0 }],
  ["W_e", { known: "power", W_e: -1 }],
  ["p_me", { known: "pressure", p_me: 0 }],
  ["V_d", { V_d: 0 }],
  ["M", { known: "both", W_e: 1e6, M: 0.01 }],
  ["M", { known: "both", W_e: 1, M: 1e6 }],
  ["m_f", { fuel: "flow", m_f: 0, LHV: 43e6 }],
  ["m_f", { fuel: "flow", m_f: 1e-4, LHV: 43e6 }],
  ["LHV", { fuel: "flow", m_f: 0.02, LHV: 0 }],
] as const)("refuses %s that cannot be", (field, change) => {
  const given = { ...engine, known: "torque", M: 345, n: 6500 / 60, ...change } as PowerTorqueGiven;
  try {
    powerTorque(given);
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(DomainError);
    expect((error as DomainError).field).toBe(field);
  }
});
