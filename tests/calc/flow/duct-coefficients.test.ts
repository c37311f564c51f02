import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acceptParts,
  bendCoefficient,
  type DuctPartsGiven,
  inletCoefficient,
  outletCoefficient,
  tabledBendCoefficient,
} from "../../../calc/flow/duct-coefficients.ts";
import { reducerLoss } from "../../../calc/flow/reducer-loss.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain } from "../../../calc/relation/trace.ts";

fc.configureGlobal({ numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) });

const degree = Math.PI / 180;
const d = 0.076;
const f = 0.019;
const angle = fc.double({ min: 1, max: 180, noNaN: true }).map((degrees) => degrees * degree);
const larger = fc.double({ min: 1, max: 20, noNaN: true }).map((times) => times * d);
const inletOf = (inlet: Parameters<typeof inletCoefficient>[0]) => inletCoefficient(inlet, d, f, plain);
const outletOf = (outlet: Parameters<typeof outletCoefficient>[0]) => outletCoefficient(outlet, d, plain);

describe("nothing is lost where nothing happens", () => {
  test("bends of no angle", () => {
    expect(bendCoefficient({ kind: "smooth", theta: 0, R_b: 2 }, f, plain)).toBe(0);
    expect(bendCoefficient({ kind: "mitre", theta: 0 }, f, plain)).toBe(0);
  });

  test("steps and cones to the same bore", () => {
    expect(inletOf({ kind: "none" })).toBe(0);
    expect(inletOf({ kind: "step", d_l: d })).toBeCloseTo(0, 14);
    expect(inletOf({ kind: "cone", d_l: d, theta_c: 1 })).toBeCloseTo(0, 14);
    expect(reducerLoss.compute({ theta_c: 1, beta_d: 1 })).toBe(0);
    expect(outletOf({ kind: "none" })).toBe(0);
    expect(outletOf({ kind: "step", d_l: d })).toBe(0);
    expect(outletOf({ kind: "cone", d_l: d, theta_c: 1 })).toBe(0);
  });
});

describe("limits", () => {
  test("a step up to a large space takes all, as a plenum does, and a step down from one is a sharp entrance", () => {
    expect(outletOf({ kind: "step", d_l: 1e6 * d })).toBeCloseTo(outletOf({ kind: "plenum" }), 10);
    const sharp = inletOf({ kind: "entrance", R_l: 0 });
    expect(inletOf({ kind: "step", d_l: 1e6 * d })).toBeCloseTo(sharp, 10);
    expect(sharp).toBeCloseTo(0.57, 2);
  });

  test("a cone of 180° is a step but for the friction on its wall", () => {
    fc.assert(
      fc.property(larger, (d_l) => {
        const step = inletOf({ kind: "step", d_l });
        const cone = inletOf({ kind: "cone", d_l, theta_c: Math.PI });
        expect(cone - step).toBeGreaterThanOrEqual(0);
        expect(cone - step).toBeLessThanOrEqual(f / 8);
        expect(outletOf({ kind: "cone", d_l, theta_c: Math.PI })).toBe(outletOf({ kind: "step", d_l }));
      }),
    );
  });

  test("a rounder lip costs less, and past one bore no less", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.9, noNaN: true }), (R_l) => {
        expect(inletOf({ kind: "entrance", R_l: R_l + 0.05 })).toBeLessThan(
          inletOf({ kind: "entrance", R_l }),
        );
      }),
    );
    expect(inletOf({ kind: "entrance", R_l: 5 })).toBe(inletOf({ kind: "entrance", R_l: 1 }));
  });
});

test("a larger angle of a bend costs more, and a mitre costs more than a bend of 1.5 bores", () => {
  fc.assert(
    fc.property(angle, (theta) => {
      const of = (at: number) => bendCoefficient({ kind: "smooth", theta: at, R_b: 1.5 }, f, plain);
      expect(of(theta)).toBeGreaterThan(of(0.95 * theta));
      // A mitre of a few degrees is hardly a bend at all.
      if (theta < 40 * degree || theta > 150 * degree) return;
      expect(bendCoefficient({ kind: "mitre", theta }, f, plain)).toBeGreaterThan(of(theta));
    }),
  );
});

test("no diffuser costs more than a step", () => {
  fc.assert(
    fc.property(larger, angle, (d_l, theta_c) => {
      expect(outletOf({ kind: "cone", d_l, theta_c })).toBeLessThanOrEqual(outletOf({ kind: "step", d_l }));
    }),
  );
});

test("the table has no bends tighter than a bore, no mitres past a right angle, and no small angles", () => {
  expect(tabledBendCoefficient({ kind: "smooth", theta: 44 * degree, R_b: 1.5 }, d, plain)).toBeUndefined();
  expect(tabledBendCoefficient({ kind: "mitre", theta: 14 * degree }, d, plain)).toBeUndefined();
  expect(tabledBendCoefficient({ kind: "smooth", theta: 1, R_b: 0.9 }, d, plain)).toBeUndefined();
  expect(tabledBendCoefficient({ kind: "mitre", theta: 1.7 }, d, plain)).toBeUndefined();
  expect(tabledBendCoefficient({ kind: "smooth", theta: 1, R_b: 1.5 }, 0.04e-3, plain)).toBeUndefined();
});

test("two handbooks agree on a usual bend within half", () => {
  for (const R_b of [1, 1.5, 2, 3, 6])
    for (const theta of [45, 90, 180]) {
      const bend = { kind: "smooth", theta: theta * degree, R_b } as const;
      const other = tabledBendCoefficient(bend, d, plain) ?? Number.NaN;
      expect(Math.abs(Math.log(other / bendCoefficient(bend, f, plain)))).toBeLessThan(Math.log(1.5));
    }
});

const usual: DuctPartsGiven = {
  d,
  N_b: 3,
  bend: "smooth",
  theta: 90 * degree,
  R_b: 1.5,
  inlet: "rounded",
  R_l: 0.1,
  d_before: 0.1,
  theta_before: 30 * degree,
  outlet: "cone",
  d_after: 0.1,
  theta_after: 12 * degree,
};

describe("it refuses, and names the field and the bound", () => {
  test.each([
    ["half a bend", { N_b: 1.5 }, "N_b", undefined],
    ["fewer than no bends", { N_b: -1 }, "N_b", 0],
    ["a bend past the half circle", { theta: 4 }, "theta", Math.PI],
    ["a mitre past 150°", { bend: "mitre", theta: 3 }, "theta", 150 * degree],
    ["a bend through its own axis", { R_b: 0.4 }, "R_b", 0.5],
    ["a lip of less than nothing", { R_l: -0.1 }, "R_l", 0],
    ["a step down from a smaller pipe", { inlet: "step", d_before: 0.05 }, "d_before", d],
    ["a step up to a smaller pipe", { outlet: "step", d_after: 0.05 }, "d_after", d],
    ["a cone that never ends", { theta_after: 0 }, "theta_after", degree],
    ["a cone that turns back", { inlet: "cone", theta_before: 4 }, "theta_before", Math.PI],
  ] as const)("%s", (_, change, field, bound) => {
    try {
      acceptParts({ ...usual, ...change });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe(field);
      expect(error.limit?.value).toBe(bound);
    }
  });

  test("a number that is missing", () => {
    expect(() => acceptParts({ ...usual, R_b: undefined })).toThrow(/missing/);
    expect(() => acceptParts({ ...usual, d_after: undefined })).toThrow(/missing/);
  });
});
