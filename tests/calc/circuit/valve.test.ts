import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CharacteristicGiven, characteristicOf } from "../../../calc/circuit/valve/characteristic.ts";
import { type ControlValveGiven, controlValve } from "../../../calc/circuit/valve/control-valve.ts";
import { installed } from "../../../calc/circuit/valve/installed.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const valve = {
  wanted: "flow",
  liquid: "water",
  T_w: 298.15,
  fittings: "reducers",
  d_v: 0.04,
  d_in: 0.0525,
  d_out: 0.0525,
  K_v: 16 / 3600,
  p_in: 350e3,
  p_out: 200e3,
  F_L: 0.9,
  F_d: 0.46,
} as const satisfies ControlValveGiven;

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

const said = (given: ControlValveGiven) => {
  const trace = recording();
  controlValve(given, trace);
  return trace.notes.map(({ about }) => about);
};

describe("a control valve", () => {
  test("the coefficient for a flow passes that flow, choked or not, with reducers or without", () => {
    fc.assert(
      fc.property(
        number(2, 40),
        number(120e3, 900e3),
        number(0.02, 0.98),
        number(275, 365),
        number(0.4, 0.95),
        number(0.04, 0.1),
        number(0.04, 0.1),
        (K, p_in, part, T_w, F_L, d_in, d_out) => {
          const given = { ...valve, K_v: K / 3600, p_in, p_out: part * p_in, T_w, F_L, d_in, d_out };
          const { V_w, isChoked } = controlValve(given);
          const back = controlValve({ ...given, wanted: "coefficient", V_w });
          expect(back.V_w / V_w).toBeCloseTo(1, 9);
          // Past choking more than one coefficient need not follow, and here one does.
          expect(back.K_v / given.K_v).toBeCloseTo(1, 9);
          expect(back.isChoked || back.Delta_p_v / back.Delta_p_ch > 1 - 1e-9).toBe(isChoked);
        },
      ),
      runs,
    );
  });

  test("more difference never brings less flow, and past choking no more", () => {
    fc.assert(
      fc.property(number(0, 349e3), number(0, 349e3), (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const [more, less] = [low, high].map((p_out) => controlValve({ ...valve, p_out }));
        expect(more?.V_w).toBeGreaterThanOrEqual(less?.V_w as number);
        if (more?.isChoked && less?.isChoked) expect(more.V_w).toBe(less.V_w);
      }),
      runs,
    );
  });

  test("reducers take flow, and choke it earlier", () => {
    const plainPipe = controlValve({ ...valve, fittings: "none" });
    const reduced = controlValve(valve);
    expect(reduced.V_w).toBeLessThan(plainPipe.V_w);
    expect(reduced.F_LP).toBeLessThan(plainPipe.F_LP);
  });

  test("choking, flashing, slow flow and a valve too large for its bore are said", () => {
    expect(said(valve)).toEqual([]);
    expect(said({ ...valve, p_out: 20e3 })).toEqual(["Delta_p_v"]);
    expect(said({ ...valve, p_out: 2e3 })).toEqual(["p_out", "Delta_p_v"]);
    expect(said({ ...valve, fittings: "none", K_v: 1e-3 / 3600 })).toEqual(["Re_v"]);
    expect(said({ ...valve, K_v: 90 / 3600 })).toEqual(["K_v"]);
  });

  test("what cannot be is refused at its field", () => {
    const field = (more: Partial<ControlValveGiven>) =>
      refusal(() => controlValve({ ...valve, ...more })).field;
    expect(field({ p_out: 350e3 })).toBe("p_out");
    expect(field({ p_in: Number.NaN })).toBe("p_in");
    expect(field({ d_in: 0.03 })).toBe("d_in");
    expect(field({ F_L: 1.2 })).toBe("F_L");
    expect(field({ T_w: 500 })).toBe("T_w");
    expect(field({ wanted: "coefficient", V_w: 0.2 })).toBe("d_v");
    expect(field({ wanted: "coefficient" })).toBe("V_w");
  });
});

const turns = {
  characteristic: "table",
  table: [
    [0, 0],
    [15, 2],
    [30, 7],
    [45, 15],
    [60, 27],
    [75, 38],
    [90, 41],
  ],
} as const satisfies CharacteristicGiven;

describe("a table of position against flow", () => {
  test("positions in degrees or per cent, flows in any unit, and lines in any order are one table", () => {
    const { opening } = characteristicOf(turns);
    const other = characteristicOf({
      characteristic: "table",
      table: turns.table.map(([x, flow]) => [x / 0.9, 7 * flow] as const).reverse(),
    });
    for (const x of [0, 0.1, 0.37, 0.8, 1]) expect(other.opening(x)).toBeCloseTo(opening(x), 12);
  });

  test("a position that a flow asks for gives that flow", () => {
    const given: readonly CharacteristicGiven[] = [
      turns,
      { characteristic: "equal-percentage", R_0: 50 },
      { characteristic: "linear" },
      { characteristic: "quick-opening" },
    ];
    fc.assert(
      fc.property(fc.constantFrom(...given), number(0, 1), (one, x) => {
        const { opening, position, least } = characteristicOf(one);
        const phi_v = opening(x);
        expect(phi_v).toBeGreaterThanOrEqual(least);
        expect(opening(position(phi_v))).toBeCloseTo(phi_v, 9);
      }),
      runs,
    );
  });

  test.each([
    ["too few lines", [[0, 1]], "two lines"],
    [
      "a line without a number",
      [
        [0, 0],
        [1, Number.NaN],
      ],
      "lacks a number",
    ],
    [
      "one position twice",
      [
        [0, 0],
        [1, 2],
        [1, 3],
      ],
      "same position",
    ],
    [
      "a flow that falls",
      [
        [0, 0],
        [1, 3],
        [2, 2],
      ],
      "has to rise",
    ],
    [
      "a flow below zero",
      [
        [0, -1],
        [1, 3],
      ],
      "below zero",
    ],
  ] as const)("%s is refused", (_, table, says) => {
    const error = refusal(() => characteristicOf({ characteristic: "table", table }));
    expect(error.field).toBe("table");
    expect(error.message).toContain(says);
  });
});

describe("a valve in its circuit", () => {
  test("with all of the authority it does what it was made to, and open it passes all", () => {
    const linear = { characteristic: "linear", N_v: 1 } as const;
    expect(installed({ ...linear, x_v: 0.3 })).toMatchObject({ phi_v: 0.3, q_v: 0.3 });
    expect(installed({ ...linear, x_v: 0.3 }).gain).toBeCloseTo(1, 9);
    expect(installed({ ...linear, N_v: 0.05, x_v: 1 }).q_v).toBe(1);
    expect(installed({ ...linear, x_v: 0 }).q_v).toBe(0);
  });

  test("the gain is the slope of the installed flow: for a linear valve N q³ / φ³", () => {
    fc.assert(
      fc.property(number(0.05, 1), number(0.05, 0.99), (N_v, x_v) => {
        const { q_v, gain } = installed({ characteristic: "linear", N_v, x_v });
        expect(gain / ((N_v * q_v ** 3) / x_v ** 3)).toBeCloseTo(1, 4);
      }),
      runs,
    );
  });

  test("the position for a part of the flow passes that part, and a table gives it in its own unit", () => {
    const given: readonly CharacteristicGiven[] = [
      turns,
      { characteristic: "equal-percentage", R_0: 50 },
      { characteristic: "linear" },
      { characteristic: "quick-opening" },
    ];
    fc.assert(
      fc.property(fc.constantFrom(...given), number(0.01, 1), number(0.02, 1), (one, N_v, x_v) => {
        const { q_v } = installed({ ...one, N_v, x_v });
        const back = installed({ ...one, N_v, wanted: "position", q_v });
        expect(back.q_v).toBeCloseTo(q_v, 9);
        expect(back.y_v).toBeCloseTo((one === turns ? 90 : 1) * back.x_v, 9);
      }),
      runs,
    );
    expect(installed({ ...turns, N_v: 0.4, y_v: 45 })).toEqual(installed({ ...turns, N_v: 0.4, x_v: 0.5 }));
  });

  test("a flow below that of a valve just before it shuts, and a position past the table, are refused", () => {
    const shut = { characteristic: "equal-percentage", R_0: 50, N_v: 0.3, wanted: "position" } as const;
    expect(refusal(() => installed({ ...shut, q_v: 0.01 })).limit?.value).toBeCloseTo(
      installed({ ...shut, wanted: "flow", x_v: 0 }).q_v,
      12,
    );
    expect(refusal(() => installed({ ...turns, N_v: 0.3, y_v: 91 })).field).toBe("y_v");
  });

  test("a position near an end of the travel is said", () => {
    for (const [x_v, count] of [
      [0.1, 1],
      [0.5, 0],
      [0.9, 1],
    ] as const) {
      const trace = recording();
      installed({ characteristic: "linear", N_v: 0.5, x_v }, trace);
      expect(trace.notes.length).toBe(count);
    }
  });

  test("a small authority is said", () => {
    for (const [N_v, count] of [
      [0.05, 1],
      [0.2, 1],
      [0.3, 0],
    ] as const) {
      const trace = recording();
      installed({ characteristic: "linear", N_v, x_v: 0.5 }, trace);
      expect(trace.notes.length).toBe(count);
    }
  });
});
