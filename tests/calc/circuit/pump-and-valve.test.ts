import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PumpAndValveGiven, pumpAndValve } from "../../../calc/circuit/pump-and-valve.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const branch = {
  wanted: "flow",
  source: "pump",
  points: [
    [0, 30],
    [10 / 3600, 29],
    [20 / 3600, 26],
  ],
  h_z: 2,
  liquid: "water",
  T_w: 298.15,
  T_w_out: 298.15,
  L: 25,
  d: 0.0525,
  k_s: 45e-6,
  K: 9,
  Delta_p_ref: 18e3,
  V_ref: 12 / 3600,
  n_p: 2,
  characteristic: "equal-percentage",
  R_0: 50,
  K_vs: 25 / 3600,
  F_L: 0.9,
  p_out: 106.3e3,
  x_v: 0.6,
} as const satisfies PumpAndValveGiven;

const turns = {
  characteristic: "table",
  table: [
    [1, 0],
    [3, 2.5],
    [5, 9],
    [8, 16],
  ],
} as const;

const said = (more: Partial<PumpAndValveGiven>) => {
  const trace = recording();
  pumpAndValve({ ...branch, ...more }, trace);
  return trace.notes.map(({ about }) => about);
};

function refusedAt(more: Partial<PumpAndValveGiven>): string {
  try {
    pumpAndValve({ ...branch, ...more });
  } catch (error) {
    if (error instanceof DomainError) return error.field;
    throw error;
  }
  throw new Error("not refused");
}

describe("a circuit by flat fields", () => {
  test("a position in turns is that part of the travel, there and back", () => {
    fc.assert(
      fc.property(number(1.2, 8), (y_v) => {
        const at = pumpAndValve({ ...branch, ...turns, y_v });
        expect(at.x_v).toBeCloseTo((y_v - 1) / 7, 12);
        expect(at.y_v).toBeCloseTo(y_v, 12);
        const back = pumpAndValve({ ...branch, ...turns, wanted: "position", V_w: at.V_w });
        expect(back.y_v).toBeCloseTo(y_v, 5);
      }),
      runs,
    );
  });

  test("pump, lift, losses and valve add up, and the head is that of the pump", () => {
    const { Delta_p_P, Delta_p_take, Delta_p_v, h_P, V_w } = pumpAndValve(branch);
    expect(Delta_p_take + Delta_p_v).toBeCloseTo(Delta_p_P, 6);
    expect(h_P).toBeCloseTo(30 - 0.01 * (3600 * V_w) ** 2, 9);
  });

  test("at the bound the valve begins to choke: below it does, above it does not", () => {
    for (const more of [{ F_L: 0.7 }, { F_L: 0.75, T_w_out: 345.15 }, { F_L: 0.7, ...turns, y_v: 3 }]) {
      const { x_choked, y_choked } = pumpAndValve({ ...branch, ...more });
      if (x_choked === undefined || y_choked === undefined) throw new Error("no bound");
      for (const [step, isChoked] of [
        [-1e-4, true],
        [1e-4, false],
      ] as const) {
        const at = { x_v: x_choked + step, y_v: y_choked + step };
        expect(pumpAndValve({ ...branch, ...more, ...at }).isChoked).toBe(isChoked);
      }
    }
    expect(pumpAndValve({ ...branch, F_L: 1 }).x_choked).toBeUndefined();
  });

  test("the transition of the pipe lies where its Reynolds number says", () => {
    const { V_laminar, V_turbulent } = pumpAndValve(branch);
    const at = (V_w: number) =>
      pumpAndValve({ ...branch, characteristic: "linear", wanted: "position", V_w }).Re;
    expect(at(V_laminar)).toBeCloseTo(2300, 6);
    expect(at(V_turbulent)).toBeCloseTo(4000, 6);
  });

  test("a tank lasts for what it holds at a flow between the first and the last", () => {
    const tank = { source: "tank", h_w: 6, h_to: 2, A: 1.5 } as const;
    const { t = Number.NaN, V_w, V_end = Number.NaN } = pumpAndValve({ ...branch, ...tank });
    expect(t).toBeGreaterThan((1.5 * 4) / V_w);
    expect(t).toBeLessThan((1.5 * 4) / V_end);
    expect(refusedAt({ ...tank, h_to: 7 })).toBe("h_to");
    expect(refusedAt({ ...tank, A: 0 })).toBe("A");
  });

  test("an unusual speed, a position near an end, and water that flashes are said", () => {
    expect(said({})).toEqual([]);
    expect(said({ d: 0.025 })).toContain("c_w");
    expect(said({ d: 0.15 })).toContain("c_w");
    expect(said({ x_v: 0.9 })).toContain("x_v");
    expect(said({ ...turns, y_v: 1.5 })).toContain("y_v");
    expect(said({ T_w_out: 383.15 })).toContain("p_out");
  });

  test("what cannot be is refused at its field", () => {
    expect(refusedAt({ h_z: 40 })).toBe("h_z");
    expect(refusedAt({ ...turns, y_v: 0.5 })).toBe("y_v");
    expect(refusedAt({ T_w_out: 463.15 })).toBe("T_w_out");
    expect(refusedAt({ wanted: "position", V_w: 0.02 })).toBe("V_w");
    expect(refusedAt({ points: [[0, 30]] })).toBe("points");
  });
});
