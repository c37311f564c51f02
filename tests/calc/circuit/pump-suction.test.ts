import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PumpSuctionGiven, pumpSuction, STRAINER } from "../../../calc/circuit/pump/pump-suction.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const rig = {
  surface: "open",
  p_0: 98e3,
  loss: "pipe",
  V_w: 9 / 3600,
  L: 6,
  d: 0.0525,
  k_s: 45e-6,
  K: 3,
  Delta_p_str: 5e3,
  liquid: "water",
  T_w: 303.15,
  h_suc: 1.5,
  NPSH_R: 3,
} as const satisfies PumpSuctionGiven;

function refusal(more: Partial<PumpSuctionGiven>): string {
  try {
    pumpSuction({ ...rig, ...more });
  } catch (error) {
    if (error instanceof DomainError) return error.field;
    throw error;
  }
  throw new Error("not refused");
}

const rigs = fc.record({
  p_0: number(6e4, 1.05e5),
  T_w: number(274, 350),
  V_w: number(0, 0.006),
  Delta_p_str: number(0, 2e4),
  h_suc: number(-3, 5),
  NPSH_R: number(0.5, 6),
});

describe("the suction of a pump", () => {
  test("in water as warm as it may be the pump has what it needs", () => {
    fc.assert(
      fc.property(rigs, (some) => {
        const given = { ...rig, ...some };
        const { T_most } = pumpSuction(given);
        if (T_most !== undefined) expect(pumpSuction({ ...given, T_w: T_most }).Delta_NPSH).toBeCloseTo(0, 6);
      }),
      runs,
    );
  });

  test("with all the loss that may still come nothing is left to spare", () => {
    fc.assert(
      fc.property(rigs, (some) => {
        const given = { ...rig, ...some };
        const { Delta_p_more, Delta_NPSH } = pumpSuction(given);
        if (Delta_p_more === undefined) expect(Delta_NPSH).toBeLessThan(0);
        else {
          const Delta_p_str = given.Delta_p_str + Delta_p_more;
          expect(pumpSuction({ ...given, Delta_p_str }).Delta_NPSH).toBeCloseTo(0, 9);
        }
      }),
      runs,
    );
  });

  test("a known loss is as good as the pipe that has it", () => {
    const { Delta_p_sp, NPSH_A } = pumpSuction(rig);
    expect(pumpSuction({ ...rig, loss: "known", Delta_p_sp }).NPSH_A).toBe(NPSH_A);
  });

  test("no warmest water where the pump stands low enough, or starves in the coldest", () => {
    expect(pumpSuction({ ...rig, h_suc: -6 }).T_most).toBeUndefined();
    expect(pumpSuction({ ...rig, h_suc: 8 }).T_most).toBeUndefined();
  });
});

test("a strainer that common practice cleans is noted, with the loss from which it does", () => {
  const trace = recording();
  pumpSuction({ ...rig, Delta_p_str: 17e3 }, trace);
  expect(trace.notes).toMatchObject([{ about: "Delta_p_str", limit: { value: STRAINER.change[0] } }]);
});

test("what is missing is named by its field", () => {
  expect(refusal({ p_0: undefined })).toBe("p_0");
  expect(refusal({ surface: "closed" })).toBe("p_surf");
  expect(refusal({ loss: "known" })).toBe("Delta_p_sp");
  expect(refusal({ L: undefined })).toBe("L");
  expect(refusal({ Delta_p_str: undefined })).toBe("Delta_p_str");
});
