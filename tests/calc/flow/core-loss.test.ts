import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CoreLossGiven, coreLoss } from "../../../calc/flow/core-loss.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

// Drawings of a rig cooler, worked out with a second program.
const rig: CoreLossGiven = {
  m_a: 0.35,
  p_2: 260e3,
  T_2: 458.15,
  T_3: 331.928,
  A_c: 0.0207375,
  sigma: 0.63032,
  L: 0.16,
  D_h: 2.4508e-3,
  f_F: 0.042711,
  surface: "interrupted",
  headers: "none",
};
const headers = { headers: "own", K_in: 1.2, d_in: 0.08, K_out: 0.5, d_out: 0.08 } as const;

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cores = fc.record({
  m_a: number(0.05, 0.8),
  p_2: number(90e3, 500e3),
  T_2: number(290, 520),
  T_3: number(280, 400),
  w: number(0, 0.04),
  A_c: number(0.02, 0.1),
  sigma: number(0.2, 0.95),
  L: number(0.03, 0.3),
  D_h: number(2e-3, 8e-3),
  f_F: number(0.005, 0.06),
  surface: fc.constantFrom("interrupted", "channels", "tubes-laminar", "turbulent", "own"),
  K_d: number(1, 1.43),
  x_b: number(0, 0.5),
  headers: fc.constantFrom("none", "own"),
  K_in: number(0, 2),
  d_in: number(0.06, 0.2),
  K_out: number(0, 2),
  d_out: number(0.06, 0.2),
});

/** What a core makes of air that passes it; a refusal is tried elsewhere. */
function passing(given: CoreLossGiven) {
  try {
    return coreLoss(given);
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

function refusal(given: CoreLossGiven): DomainError {
  try {
    coreLoss(given);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("the loss of a core", () => {
  test("is the sum of its parts, with the headers before and behind", () => {
    fc.assert(
      fc.property(cores, (given) => {
        const found = passing(given);
        if (!found) return;
        const { Delta_p_ent, Delta_p_acc, Delta_p_fr, Delta_p_exit, Delta_p_core, Delta_p_23, p_3 } = found;
        const scale = 1e-10 * given.p_2;
        const sum = Delta_p_ent + Delta_p_acc + Delta_p_fr + Delta_p_exit;
        expect(Math.abs(sum - Delta_p_core)).toBeLessThan(scale);
        const all = (found.Delta_p_hd_in ?? 0) + Delta_p_core + (found.Delta_p_hd_out ?? 0);
        expect(Math.abs(all - Delta_p_23)).toBeLessThan(scale);
        expect(Math.abs(given.p_2 - Delta_p_23 - p_3)).toBeLessThan(scale);
      }),
      runs,
    );
  });

  test("air that keeps its density needs nothing to change its speed", () => {
    // Without friction and at one temperature only the loss itself makes the air thinner.
    const { Delta_p_acc, Delta_p_core } = coreLoss({ ...rig, T_3: rig.T_2, f_F: 0 });
    expect(Math.abs(Delta_p_acc)).toBeLessThan(1e-2 * Delta_p_core);
    const cooled = coreLoss(rig);
    const warmed = coreLoss({ ...rig, T_3: 520 });
    expect(cooled.Delta_p_acc).toBeLessThan(0);
    expect(warmed.Delta_p_acc).toBeGreaterThan(0);
  });

  test("has nothing at entrance and exit where all of the face is free and the speed even", () => {
    const open = coreLoss({ ...rig, sigma: 1, surface: "own", K_d: 1, T_3: rig.T_2 });
    expect(open.K_c).toBeCloseTo(0, 12);
    expect(open.K_e).toBeCloseTo(0, 12);
    expect(open.Delta_p_ent).toBeCloseTo(0, 9);
    expect(open.Delta_p_exit).toBeCloseTo(0, 9);
  });

  test("masking a share is a core with so much less free area", () => {
    fc.assert(
      fc.property(cores, (given) => {
        const masked = passing(given);
        const smaller = passing({ ...given, A_c: given.A_c * (1 - given.x_b), x_b: 0 });
        expect(masked).toEqual(smaller);
      }),
      runs,
    );
  });

  test("grows with the flow, with blocked face and with headers", () => {
    const one = coreLoss(rig).Delta_p_core;
    expect(coreLoss({ ...rig, m_a: 0.4 }).Delta_p_core).toBeGreaterThan(one);
    expect(coreLoss({ ...rig, x_b: 0.1 }).Delta_p_core).toBeGreaterThan(one);
    expect(coreLoss({ ...rig, ...headers }).Delta_p_23).toBeGreaterThan(one);
  });

  test("records the pass that was found, and nothing of the search", () => {
    const trace = recording();
    const found = coreLoss({ ...rig, ...headers }, trace);
    expect(trace.steps.filter(({ relation }) => relation === "flow/core-friction")).toHaveLength(1);
    expect(trace.steps.filter(({ relation }) => relation === "flow/fitting-loss")).toHaveLength(2);
    expect(coreLoss({ ...rig, ...headers }, plain)).toEqual(found);
  });

  test("says so where it takes much of the pressure", () => {
    const trace = recording();
    coreLoss({ ...rig, m_a: 2.5 }, trace);
    expect(trace.notes.map(({ about }) => about)).toContain("Delta_p_core");
    const narrow = recording();
    coreLoss({ ...rig, ...headers, d_in: 0.035 }, narrow);
    expect(narrow.notes.map(({ about }) => about)).toEqual(["Delta_p_23"]);
    const quiet = recording();
    coreLoss(rig, quiet);
    expect(quiet.notes).toEqual([]);
  });

  test.each([
    ["turbulent", { surface: "turbulent" }, 4000],
    ["laminar", { surface: "tubes-laminar", D_h: 7e-3 }, 2300],
    ["laminar", { surface: "channels", D_h: 7e-3 }, 2300],
  ] as const)("says so where it is hardly %s, as was chosen", (word, change, limit) => {
    const notes = (given: CoreLossGiven) => {
      const trace = recording();
      coreLoss(given, trace);
      return trace.notes;
    };
    const [note] = notes({ ...rig, ...change });
    expect(note).toMatchObject({ about: "Re", limit: { value: limit } });
    expect(note?.says).toContain(word);
    const right = { turbulent: 7e-3, "tubes-laminar": rig.D_h, channels: rig.D_h }[change.surface];
    expect(notes({ ...rig, ...change, D_h: right })).toEqual([]);
  });

  test.each([
    ["behind the cooler", { T_3: 290, w: 0.02 }],
    ["before the cooler", { T_2: 290, T_3: 300, w: 0.02 }],
  ])("says so where the air %s is given more vapour than it can hold", (where, change) => {
    const trace = recording();
    coreLoss({ ...rig, ...change }, trace);
    const [note] = trace.notes;
    expect(note?.about).toBe("w");
    expect(note?.says).toContain(where);
    expect(note?.limit?.value).toBeLessThan(0.02);
  });
});

describe("is refused", () => {
  test("where the air does not pass, with the flow from which on that is so", () => {
    fc.assert(
      fc.property(cores, (given) => {
        const much = { ...given, m_a: 500 };
        const { field, limit } = refusal(much);
        expect(field).toBe("m_a");
        const most = limit?.value ?? Number.NaN;
        expect(passing({ ...much, m_a: most * (1 - 1e-6) })).toBeDefined();
        expect(passing({ ...much, m_a: most * (1 + 1e-6) })).toBeUndefined();
      }),
      runs,
    );
  });

  test.each([
    ["m_a", { m_a: 0 }],
    ["p_2", { p_2: 0 }],
    ["T_2", { T_2: 100 }],
    ["T_3", { T_3: undefined }],
    ["w", { w: -0.1 }],
    ["A_c", { A_c: 0 }],
    ["sigma", { sigma: 1.1 }],
    ["L", { L: 0 }],
    ["D_h", { D_h: -1 }],
    ["f_F", { f_F: -0.01 }],
    ["K_d", { surface: "own", K_d: 0.9 }],
    ["x_b", { x_b: 0.95 }],
    ["K_in", { ...headers, K_in: -1 }],
    ["d_out", { ...headers, d_out: 0 }],
  ] as const)("%s that cannot be", (field, change) => {
    expect(refusal({ ...rig, ...change }).field).toBe(field);
  });
});
