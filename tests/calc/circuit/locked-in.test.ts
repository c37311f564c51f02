import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type LockedInWaterGiven, lockedInWater } from "../../../calc/circuit/locked-in/locked-in-water.ts";
import { wallMaterials } from "../../../calc/circuit/locked-in/wall-materials.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const pipe = {
  T_in: 288.15,
  Delta_T: 10,
  p_in: 3e5,
  p_lim: 7e5,
  material: "steel",
  vessel: "pipe",
  d: 0.0525,
  t_w: 0.0039,
} as const satisfies LockedInWaterGiven;

function refusal(more: Partial<LockedInWaterGiven>): DomainError {
  try {
    lockedInWater({ ...pipe, ...more });
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("water that is locked in", () => {
  test("warmed as far as it is told, it is at the pressure that the weakest part bears", () => {
    const vessels = fc.record({
      T_in: number(280, 360),
      p_in: number(1.5e5, 1e6),
      more: number(1e4, 5e6),
      material: fc.constantFrom(...(Object.keys(wallMaterials) as (keyof typeof wallMaterials)[])),
      t_w: number(0.001, 0.01),
    });
    fc.assert(
      fc.property(vessels, ({ more, ...vessel }) => {
        const given = { ...pipe, ...vessel, p_lim: vessel.p_in + more };
        const { Delta_T_lim } = lockedInWater({ ...given, Delta_T: 0 });
        expect(Delta_T_lim).toBeDefined();
        // The pressure is sought to 1 Pa.
        const { p_out } = lockedInWater({ ...given, Delta_T: Delta_T_lim as number });
        expect(Math.abs(p_out - given.p_lim)).toBeLessThan(3);
      }),
      runs,
    );
  });

  test("in a rigid vessel at 20 °C it rises by about 0.46 MPa for each kelvin", () => {
    const rigid = { ...pipe, vessel: "rigid", material: "stated", alpha_l: 0 } as const;
    const { Delta_p } = lockedInWater({ ...rigid, T_in: 292.65, Delta_T: 1 });
    // 2.1e-4 per K over 4.6e-10 per Pa, to their two digits: from memory.
    expect(Delta_p / 0.46e6).toBeCloseTo(1, 1);
  });

  test("what stretches more has less pressure", () => {
    const rise = (more: Partial<LockedInWaterGiven>) => lockedInWater({ ...pipe, ...more }).Delta_p;
    expect(rise({ vessel: "rigid" })).toBeGreaterThan(rise({}));
    expect(rise({})).toBeGreaterThan(rise({ material: "aluminium" }));
  });
});

test("a pressure past what the weakest part bears is noted, with it", () => {
  const trace = recording();
  expect(lockedInWater(pipe, trace)).toEqual(lockedInWater(pipe));
  expect(trace.notes).toMatchObject([{ about: "p_out", limit: { value: 7e5 } }]);
});

describe("what is refused", () => {
  test("water that shrinks, at the warming that was asked for", () => {
    expect(refusal({ T_in: 273.6, Delta_T: 2 }).field).toBe("Delta_T");
    expect(refusal({ Delta_T: 340 }).field).toBe("Delta_T");
  });

  test("a weakest part that bears less than there was, with that", () => {
    const { field, limit } = refusal({ p_lim: 2e5 });
    expect([field, limit?.value]).toEqual(["p_lim", 3e5]);
  });

  test("what is missing of a stated wall", () => {
    expect(refusal({ material: "stated" }).field).toBe("alpha_l");
    expect(refusal({ material: "stated", alpha_l: 1e-5 }).field).toBe("E_m");
  });
});
