import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drainTime } from "../../../calc/circuit/drain-time.ts";
import { lockedIn } from "../../../calc/circuit/locked-in/locked-in-pressure.ts";
import { pumpCurve } from "../../../calc/circuit/pump/pump-curve.ts";
import { suction } from "../../../calc/circuit/pump/suction.ts";
import { seawaterVelocities } from "../../../calc/circuit/seawater-velocities.ts";
import { type WaterCircuitGiven, waterCircuit } from "../../../calc/circuit/water-circuit.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const points = [
  [0, 30],
  [10 / 3600, 29],
  [20 / 3600, 26],
] as const;
const branch = {
  source: "pump",
  points,
  h_z: 2,
  liquid: "water",
  T_w: 298.15,
  pipe: { L: 25, d: 0.0525, k_s: 45e-6, K: 9 },
  core: { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 2 },
  characteristic: "equal-percentage",
  R_0: 50,
  K_vs: 25 / 3600,
  F_L: 0.9,
  wanted: "flow",
  x_v: 0.6,
} as const satisfies WaterCircuitGiven;

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("a pump and its circuit", () => {
  const circuits = fc
    .record({
      x_v: number(0, 1),
      h_z: number(-1, 29),
      T_w: number(275, 365),
      L: number(0, 300),
      n_p: number(1, 2),
      K_vs: number(1, 60),
      F_L: number(0.4, 1),
      characteristic: fc.constantFrom("linear", "equal-percentage", "quick-opening"),
    })
    .map(
      ({ L, n_p, K_vs, ...more }): WaterCircuitGiven => ({
        ...branch,
        ...more,
        pipe: { ...branch.pipe, L },
        core: { ...branch.core, n_p },
        K_vs: K_vs / 3600,
      }),
    );

  test("what the pump gives is lifted, lost or taken by the valve, and no flow is below zero", () => {
    fc.assert(
      fc.property(circuits, (given) => {
        const { V_w, Delta_p_P, Delta_p_z, Delta_p_rest, Delta_p_v } = waterCircuit(given);
        expect(V_w).toBeGreaterThanOrEqual(0);
        expect(Delta_p_v).toBeGreaterThanOrEqual(0);
        expect((Delta_p_z + Delta_p_rest + Delta_p_v) / Delta_p_P).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test("the position for a flow gives that flow, choked or not", () => {
    fc.assert(
      fc.property(circuits, (given) => {
        const { V_w } = waterCircuit(given);
        // A valve all but closed passes less than a flow is sought to.
        if (V_w < 1e-9) return;
        const back = waterCircuit({ ...given, wanted: "position", V_w });
        expect(waterCircuit({ ...given, x_v: back.x_v }).V_w / V_w).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });

  test("a valve opened further passes more, and warmer water chokes it sooner", () => {
    fc.assert(
      fc.property(circuits, number(0, 1), (given, other) => {
        const [low, high] = [Math.min(given.x_v as number, other), Math.max(given.x_v as number, other)];
        expect(waterCircuit({ ...given, x_v: high }).V_w).toBeGreaterThanOrEqual(
          waterCircuit({ ...given, x_v: low }).V_w * (1 - 1e-9),
        );
        const hot = waterCircuit({ ...given, p_v_hot: 90e3 });
        expect(hot.V_w).toBeLessThanOrEqual(waterCircuit({ ...given, p_v_hot: 2e3 }).V_w * (1 + 1e-9));
      }),
      runs,
    );
  });

  test("no point in common, or a flow that is not to be had, is refused with what is", () => {
    const refused = (more: object) =>
      refusal(() => waterCircuit({ ...branch, ...more } as WaterCircuitGiven));
    expect(refused({ h_z: 30 }).message).toContain("no point in common");
    expect(
      refused({ h_z: -25, pipe: { ...branch.pipe, L: 0, K: 0 }, core: { ...branch.core, Delta_p_ref: 0 } })
        .field,
    ).toBe("h_z");
    const wanted = { wanted: "position" };
    expect(refused({ ...wanted, V_w: 0.009 }).message).toContain("without a valve");
    const beyondValve = refused({ ...wanted, V_w: 23 / 3600 });
    expect(beyondValve.message).toContain("fully open");
    expect(beyondValve.limit?.value).toBeCloseTo(waterCircuit({ ...branch, x_v: 1 }).V_full, 12);
    const small = refused({ ...wanted, V_w: 0.5 / 3600 });
    expect(small.limit?.value).toBeCloseTo(waterCircuit({ ...branch, x_v: 0 }).V_w, 12);
  });

  test("choking, small authority and a flow past the pump's points are said", () => {
    const said = (more: Partial<WaterCircuitGiven>) => {
      const trace = recording();
      waterCircuit({ ...branch, ...more } as WaterCircuitGiven, trace);
      return trace.notes.map(({ about }) => about);
    };
    expect(said({})).toEqual([]);
    expect(said({ x_v: 1 })).toEqual(["V_w"]);
    expect(said({ F_L: 0.6 })).toEqual(["Delta_p_v"]);
    expect(said({ K_vs: 80 / 3600, x_v: 0.3 })).toEqual(["N_v"]);
  });
});

describe("a pump from its points", () => {
  test("points that make no pump are refused", () => {
    const field = (some: readonly (readonly [number, number])[]) =>
      refusal(() => pumpCurve({ points: some }));
    expect(field([[0, 30]]).message).toContain("three points");
    expect(
      field([
        [0, 10],
        [1, 12],
        [2, 16],
      ]).message,
    ).toContain("no curve");
    expect(
      field([
        [0, 30],
        [1, Number.NaN],
        [2, 20],
      ]).message,
    ).toContain("lacks a number");
    expect(refusal(() => pumpCurve({ points, n: 40 })).field).toBe("n_ref");
  });

  test("at the flow where it ends no head is left, at any speed", () => {
    for (const n of [20, 40, 60]) {
      const pump = pumpCurve({ points, n, n_ref: 48 });
      expect(pump.head(pump.most)).toBeCloseTo(0, 9);
    }
  });
});

test("without losses but the valve a tank empties as the root of its height", () => {
  const { t, V_from, V_to } = drainTime({
    A: 0.8,
    h_from: 4,
    h_to: 0.5,
    circuit: {
      ...branch,
      characteristic: "linear",
      x_v: 1,
      F_L: 1,
      p_v_hot: 0,
      pipe: { ...branch.pipe, L: 0, K: 0 },
      core: { ...branch.core, Delta_p_ref: 0 },
    },
  });
  expect(V_to / V_from).toBeCloseTo(Math.sqrt(0.5 / 4), 9);
  expect(t).toBeCloseTo((2 * 0.8 * (4 - 0.5)) / (V_from + V_to), 6);
});

describe("the suction of a pump", () => {
  const given = { liquid: "water", T_w: 303.15, p_surf: 98e3, Delta_p_suc: 6e3, h_suc: 1.5 } as const;

  test("water that boils, and too small a margin, are said", () => {
    const said = (more: object) => {
      const trace = recording();
      suction({ ...given, ...more }, trace);
      return trace.notes.map(({ about }) => about);
    };
    expect(said({ NPSH_R: 3 })).toEqual([]);
    expect(said({ NPSH_R: 7 })).toEqual(["Delta_NPSH"]);
    expect(said({ NPSH_R: 9 })).toEqual(["Delta_NPSH"]);
    expect(said({ h_suc: 9.5 })).toEqual(["NPSH_A"]);
    expect(refusal(() => suction({ ...given, T_w: 380 })).field).toBe("T_w");
  });
});

describe("water locked in", () => {
  const given = { T_in: 293.15, T_out: 313.15, p_in: 3e5, alpha_l: 12e-6, chi_V: 5e-11 };

  test("a wall that grows or gives way takes pressure off", () => {
    const rigid = lockedIn({ ...given, alpha_l: 0, chi_V: 0 }).Delta_p;
    const grows = lockedIn({ ...given, chi_V: 0 }).Delta_p;
    expect(grows).toBeLessThan(rigid);
    expect(lockedIn(given).Delta_p).toBeLessThan(grows);
  });

  test("cooling, and bursting, are refused", () => {
    expect(refusal(() => lockedIn({ ...given, T_out: 283.15 })).message).toContain("shrinks");
    expect(refusal(() => lockedIn({ ...given, T_out: 423.15 })).message).toContain("bursts");
    expect(refusal(() => lockedIn({ ...given, T_in: 423.15 })).field).toBe("T_in");
  });
});

test("speeds of seawater: a least below the most, and no name twice", () => {
  for (const { least = 0, most } of seawaterVelocities)
    if (most) {
      expect(least).toBeLessThan(most[0]);
      expect(most[0]).toBeLessThanOrEqual(most[1]);
    }
  const ids = seawaterVelocities.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
