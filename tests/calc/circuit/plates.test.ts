import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addedRestriction } from "../../../calc/circuit/orifice/added-restriction.ts";
import { type PlateInPipeGiven, plateInPipe } from "../../../calc/circuit/orifice/plate-in-pipe.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("a plate in a pipe", () => {
  const inAir = {
    wanted: "flow",
    fluid: "air",
    taps: "corner",
    d_l: 0.1,
    d: 0.06,
    p_in: 250e3,
    T: 330,
    Delta_p: 5e3,
  } as const satisfies PlateInPipeGiven;

  test("reads in air what it reads in a gas of the same properties", () => {
    const { m, rho, mu, epsilon_e } = plateInPipe(inAir);
    // Of dry air at 330 K, from the ideal-gas tables of a textbook, from memory.
    expect(rho).toBeCloseTo(250e3 / (287.05 * 330), 3);
    expect(mu * 1e6).toBeCloseTo(19.9, 0);
    const stated = plateInPipe({ ...inAir, fluid: "gas", rho, mu, kappa: 1.399 });
    expect(stated.m / m).toBeCloseTo(1, 4);
    expect(stated.epsilon_e).toBeCloseTo(epsilon_e, 4);
  });

  test("the larger the difference, the more water; and the bore for both is the bore that made them", () => {
    fc.assert(
      fc.property(number(0.02, 0.07), number(1e3, 5e4), number(1.05, 2), (d, Delta_p, more) => {
        const inWater = { ...inAir, fluid: "water", T_w: 298.15, d, Delta_p } as const;
        const one = plateInPipe(inWater);
        expect(plateInPipe({ ...inWater, Delta_p: more * Delta_p }).m).toBeGreaterThan(one.m);
        expect(plateInPipe({ ...inWater, wanted: "bore", m: one.m }).d).toBeCloseTo(d, 9);
        expect(one.V_w).toBeCloseTo(one.m / one.rho, 12);
      }),
      runs,
    );
  });

  test("water that would boil in the hole is refused, with the difference at which it begins", () => {
    const { field, limit } = refusal(() =>
      plateInPipe({ ...inAir, fluid: "water", T_w: 353.15, p_in: 100e3, Delta_p: 60e3 }),
    );
    // 47.4 kPa is the vapour pressure of water at 80 °C.
    expect([field, Math.round((limit?.value ?? 0) / 100)]).toEqual(["Delta_p", 526]);
  });
});

describe("a plate for what a rig loses less than its target", () => {
  const rig = {
    part: "none",
    Delta_p_tgt: 12e3,
    Delta_p_rig: 5.5e3,
    m_a: 0.35,
    p_in: 250e3,
    T_in: 330,
    d_l: 0.08,
  } as const;

  test("takes the difference again at the same flow, and a quarter at half the flow", () => {
    fc.assert(
      fc.property(number(6e3, 30e3), number(0.05, 0.5), (Delta_p_tgt, m_a) => {
        const at = (m_part: number) =>
          addedRestriction({ ...rig, Delta_p_tgt, m_a, part: "also", m_part, p_part: rig.p_in, T_part: 330 });
        const { Delta_p_add, Delta_p_part } = at(m_a);
        expect(Delta_p_add).toBeCloseTo(Delta_p_tgt - rig.Delta_p_rig, 9);
        expect(Delta_p_part).toBeCloseTo(Delta_p_add, 6);
        expect(at(m_a / 2).Delta_p_part).toBeCloseTo(Delta_p_add / 4, 6);
      }),
      runs,
    );
  });

  test("a rig that loses as much or more is refused, and so is a loss that no hole can take", () => {
    expect(refusal(() => addedRestriction({ ...rig, Delta_p_rig: 12e3 })).field).toBe("Delta_p_rig");
    const { field, limit } = refusal(() => addedRestriction({ ...rig, Delta_p_tgt: 200e3 }));
    expect(field).toBe("Delta_p_tgt");
    expect(() => addedRestriction({ ...rig, Delta_p_tgt: 0.999 * (limit?.value ?? 0) })).not.toThrow();
  });
});
