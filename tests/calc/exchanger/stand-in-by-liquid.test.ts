import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rateMovingCooler } from "../../../calc/exchanger/moving-cooler.ts";
import { type StandInByLiquidGiven, standInByLiquid } from "../../../calc/exchanger/stand-in-by-liquid.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";
import { runs } from "./sample.ts";

const celsius = (t: number) => t + 273.15;

const plate: StandInByLiquidGiven = {
  arrangement: "counter-cross-2",
  m_a: 0.35,
  T_2: celsius(185),
  coolant: "seawater",
  S: 0.035,
  x_g: 0.5,
  p_w: 2e5,
  m_w: 2.5,
  T_w_in: celsius(22),
  UA_a_ref: 1220,
  m_a_ref: 0.35,
  n_a: 0.5,
  R_wall: 3e-6,
  water: "rectangular",
  a_ch: 0.08,
  b_ch: 0.0025,
  N_ch: 15,
  L: 0.2,
  N_p: 2,
  r_foul: 2e-4,
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

const targets: fc.Arbitrary<StandInByLiquidGiven> = fc
  .record({
    coolant: fc.constantFrom("seawater", "ethylene-glycol", "propylene-glycol"),
    m_a: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    T_2: fc.double({ min: celsius(110), max: celsius(200), noNaN: true }),
    T_w_in: fc.double({ min: celsius(15), max: celsius(45), noNaN: true }),
    m_w: fc.double({ min: 0.3, max: 5, noNaN: true }),
  })
  .map((one) => ({ ...plate, ...one }) as StandInByLiquidGiven);

describe("fresh water for another liquid", () => {
  test("makes the same air and warms as much, when the cooler is run forward with it", () => {
    fc.assert(
      fc.property(targets, (given) => {
        const found = standInByLiquid(given);
        const { T_w_in_cell: T_w_in, m_w_cell: m_w } = found;
        const own = rateMovingCooler(given);
        const fresh = rateMovingCooler({ ...given, coolant: "water", m_w, T_w_in });
        expect(fresh.T_3).toBeCloseTo(own.T_3, 5);
        expect(fresh.C_w / own.C_w).toBeCloseTo(1, 8);
        expect(fresh.T_w_out - T_w_in).toBeCloseTo(own.T_w_out - (given.T_w_in ?? 0), 5);
        expect(fresh.T_w_out).toBeCloseTo(found.T_w_out_cell, 8);
      }),
      { numRuns: Math.ceil((runs.numRuns ?? 100) / 4) },
    );
  });

  test("is itself, where it stands in for seawater without salt", () => {
    const found = standInByLiquid({ ...plate, S: 0, m_w: 4 });
    expect(found.T_w_in_cell).toBeCloseTo(plate.T_w_in ?? 0, 1);
    expect(found.r_alpha).toBeCloseTo(1, 2);
  });

  test("is refused where it would be ice, and where the passages are not known", () => {
    const cold = refusal(() => standInByLiquid({ ...plate, m_w: 4, T_w_in: celsius(-1.5) }));
    expect(cold.field).toBe("T_w_in");
    expect(cold.limit?.kind).toBe("temperature");
    const power = { ...plate, water: "power", UA_w_ref: 2000, m_w_ref: 1, n_w: 0.8 } as const;
    expect(refusal(() => standInByLiquid(power)).field).toBe("water");
  });

  test("says where one liquid flows turbulent and the other does not", () => {
    const trace = recording();
    standInByLiquid({ ...plate, coolant: "ethylene-glycol", T_w_in: celsius(40) }, trace);
    expect(trace.notes.map(({ about }) => about)).toContain("Re_cell");
  });
});
