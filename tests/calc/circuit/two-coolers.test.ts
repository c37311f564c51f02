import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type TwoCoolersGiven, twoCoolers } from "../../../calc/circuit/two-coolers.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const source = {
  source: "pump",
  points: [
    [0, 30],
    [10 / 3600, 29],
    [20 / 3600, 26],
  ],
  h_z: 2,
} as const;
const core = { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 1.9 };
const steel = { L: 10, d: 0.0525, k_s: 45e-6, K: 4 };
const rig = {
  ...source,
  liquid: "water",
  T_w: 298.15,
  layout: "parallel",
  wanted: "flows",
  shared: steel,
  one: { core, K_v: 6 / 3600 },
  two: { core, pipe: { ...steel, L: 25, d: 0.04 }, K_v: 3 / 3600 },
} as const satisfies TwoCoolersGiven;

const rigs = fc
  .record({
    layout: fc.constantFrom("parallel", "series"),
    T_w: number(275, 360),
    h_z: number(-2, 25),
    K_1: number(0.3, 40),
    K_2: number(0.3, 40),
    n_p: number(1, 2),
    L: number(0, 200),
  })
  .map(
    ({ layout, T_w, h_z, K_1, K_2, n_p, L }): TwoCoolersGiven => ({
      ...rig,
      layout,
      T_w,
      h_z,
      shared: { ...steel, L },
      one: { core: { ...core, n_p }, K_v: K_1 / 3600 },
      two: { ...rig.two, K_v: K_2 / 3600 },
    }),
  );

function refusal(given: TwoCoolersGiven): DomainError {
  try {
    twoCoolers(given);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("not refused");
}

describe("the balance of two coolers", () => {
  test("no water is lost, and each branch spends the pressure that it is given", () => {
    fc.assert(
      fc.property(rigs, (given) => {
        const { one, two, V_w, Delta_p_branches } = twoCoolers(given);
        const spent = [one, two].map(({ Delta_p_rest, Delta_p_v }) => Delta_p_rest + Delta_p_v);
        const [by_1, by_2] = spent as [number, number];
        if (given.layout === "parallel") {
          expect(one.V_w + two.V_w).toBe(V_w);
          expect(by_1 / Delta_p_branches).toBeCloseTo(1, 9);
          expect(by_2 / Delta_p_branches).toBeCloseTo(1, 9);
        } else {
          expect(one.V_w).toBe(two.V_w);
          expect((by_1 + by_2) / Delta_p_branches).toBeCloseTo(1, 9);
        }
      }),
      runs,
    );
  });

  test("the energy of the pump is all found again: lifted, or lost in pipe, cores and valves", () => {
    fc.assert(
      fc.property(rigs, (given) => {
        const { one, two, V_w, Delta_p_P, Delta_p_z, Delta_p_shared } = twoCoolers(given);
        const spent = [one, two].reduce((sum, b) => sum + b.V_w * (b.Delta_p_rest + b.Delta_p_v), 0);
        expect((V_w * (Delta_p_z + Delta_p_shared) + spent) / (V_w * Delta_p_P)).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test("opening one valve gives its cooler more, and the other one beside it less", () => {
    fc.assert(
      fc.property(rigs, (given) => {
        const [[own_1, by_2], [by_1, own_2]] = twoCoolers(given).moves;
        expect(own_1).toBeGreaterThan(0);
        expect(own_2).toBeGreaterThan(0);
        if (given.layout === "series") expect([by_1, by_2]).toEqual([own_1, own_2]);
        else for (const move of [by_1, by_2]) expect(move).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  test("the valves for two flows give these flows", () => {
    fc.assert(
      fc.property(rigs, (given) => {
        if (given.layout === "series") return;
        const { one, two } = twoCoolers(given);
        const back = twoCoolers({
          ...given,
          wanted: "settings",
          one: { ...given.one, V_w: one.V_w },
          two: { ...given.two, V_w: two.V_w },
        });
        expect((back.one.K_v * 3600) / ((given.one.K_v as number) * 3600)).toBeCloseTo(1, 6);
        expect((back.two.K_v * 3600) / ((given.two.K_v as number) * 3600)).toBeCloseTo(1, 6);
      }),
      runs,
    );
  });
});

describe("the order to set two valves", () => {
  test("one round after another, each valve set to its own flow, leaves the part of the miss that is promised", () => {
    const aim = twoCoolers(rig);
    // Both a little off, then one set with the other as it stands.
    const set = (K_1: number, K_2: number) =>
      twoCoolers({ ...rig, one: { ...rig.one, K_v: K_1 }, two: { ...rig.two, K_v: K_2 } });
    const own = (K_1: number, K_2: number, which: "one" | "two") => {
      let K = which === "one" ? K_1 : K_2;
      for (let i = 0; i < 60; i++) {
        const now = which === "one" ? set(K, K_2).one.V_w : set(K_1, K).two.V_w;
        K *= aim[which].V_w / now;
      }
      return K;
    };
    let [K_1, K_2] = [rig.one.K_v, rig.two.K_v * 1.02];
    const misses: number[] = [];
    for (let round = 0; round < 2; round++) {
      K_1 = own(K_1, K_2, "one");
      K_2 = own(K_1, K_2, "two");
      misses.push(Math.log(K_1 / rig.one.K_v));
    }
    const [before, after] = misses as [number, number];
    expect(after / before / aim.left).toBeCloseTo(1, 1);
  });

  test("the valve that moves the other more comes first, and alike ones in any order", () => {
    expect(twoCoolers(rig).first).toBe("one");
    const { one } = rig;
    expect(twoCoolers({ ...rig, two: one }).first).toBe("either");
    expect(twoCoolers({ ...rig, one: { core, K_v: 1 / 3600 }, two: { core, K_v: 8 / 3600 } }).first).toBe(
      "two",
    );
  });
});

describe("what is refused", () => {
  test("a height that the pump does not reach, with the one that it does", () => {
    const error = refusal({ ...rig, h_z: 31 });
    expect(error.field).toBe("h_z");
    expect(error.message).toContain("no point in common");
    expect(error.limit?.value).toBeCloseTo(30, 9);
  });

  test("two flows of coolers in one line, and flows that leave nothing for a valve", () => {
    const wanted = { ...rig, wanted: "settings" } as const;
    expect(refusal({ ...wanted, layout: "series" }).field).toBe("layout");
    const flows = { one: { ...rig.one, V_w: 1e-3 }, two: { ...rig.two, V_w: 6e-3 } };
    expect(refusal({ ...wanted, ...flows }).field).toMatch(/^V_w_(one|two)$/);
  });

  test("what is missing, by its branch", () => {
    expect(refusal({ ...rig, one: { core } }).field).toBe("K_v_one");
    expect(refusal({ ...rig, two: { core: {}, K_v: 1e-3 } }).field).toBe("Delta_p_ref_two");
    expect(refusal({ ...rig, shared: {} }).field).toBe("L_shared");
    expect(refusal({ ...rig, points: [[0, 30]] }).field).toBe("points");
  });
});

test("a valve that chokes is named", () => {
  const said = (more: Partial<TwoCoolersGiven>) => {
    const trace = recording();
    twoCoolers({ ...rig, ...more } as TwoCoolersGiven, trace);
    return trace.notes.map(({ about }) => about);
  };
  expect(said({})).toEqual([]);
  expect(said({ two: { ...rig.two, F_L: 0.5 } })).toEqual(["Delta_p_v_two"]);
  expect(refusal({ ...rig, one: { ...rig.one, F_L: 2 } }).field).toBe("F_L_one");
});

test("recorded and plain give the same numbers", () => {
  const trace = recording();
  expect(twoCoolers(rig, trace)).toEqual(twoCoolers(rig));
  expect(trace.steps.length).toBeGreaterThan(10);
});
