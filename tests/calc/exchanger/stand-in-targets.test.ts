import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { coolerAtFlows } from "../../../calc/exchanger/cooler-at-flows.ts";
import { type StandInGiven, standIn } from "../../../calc/exchanger/stand-in.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";
import { runs } from "./sample.ts";

const celsius = (t: number) => t + 273.15;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const rig: StandInGiven = {
  way: "throttle",
  target: "outlet",
  arrangement: "counter-cross-2",
  m_a: 0.35,
  T_2: celsius(185),
  coolant: "water",
  p_w: 2e5,
  known: "rectangular",
  UA_a_ref: 1220,
  m_a_ref: 0.35,
  n_a: 0.6,
  a_ch: 0.08,
  b_ch: 0.0025,
  N_ch: 15,
  L: 0.2,
  N_p: 2,
  T_w_in: celsius(22),
  m_w_least: 0.1,
  m_w_most: 3,
  m_w: 2,
  T_cold: celsius(15),
  T_3: celsius(55),
  Delta_p_t: 9000,
  Delta_p_rig: 700,
};

describe("what another cooler makes may be said in any way", () => {
  // The gas constant of dry air and the ideal gas, written out once more.
  const R = 287.0428;
  const p_2 = 260_000;
  const waysToSay = (T_3: number): readonly Partial<StandInGiven>[] => [
    { target: "outlet", T_3 },
    { target: "effectiveness", T_t_in: celsius(10), P_t: (celsius(185) - T_3) / 175 },
    { target: "ratio", p_2, D_rho: ((p_2 - 9000) / p_2) * (celsius(185) / T_3) },
    { target: "density", p_m: 251_000, rho_m: 251_000 / (R * T_3) },
  ];

  test("the match is the same, and makes the target when the water is left at it", () => {
    fc.assert(
      fc.property(number(celsius(48), celsius(75)), fc.constantFrom("throttle", "temper"), (T_3, way) => {
        for (const said of waysToSay(T_3)) {
          const { T_target, m_w, T_w_in } = standIn({ ...rig, ...said, way: way as "throttle" });
          expect(Math.abs(T_target - T_3)).toBeLessThan(2e-3);
          const forward = standIn({ ...rig, ...said, way: "now", m_w, T_w_in });
          expect(forward.T_3).toBeCloseTo(T_target, 5);
        }
      }),
      { numRuns: Math.ceil((runs.numRuns ?? 100) / 4) },
    );
  });

  test("humid air is lighter, so that a density asks for colder air", () => {
    const said = { target: "density", p_m: 251_000, rho_m: 2.6 } as const;
    expect(standIn({ ...rig, ...said, w: 0.02 }).T_target).toBeLessThan(
      standIn({ ...rig, ...said }).T_target,
    );
  });
});

describe("marks in the charts stand where the water does what they say", () => {
  test("over the flow: just laminar, just turbulent, and a wall that just boils", () => {
    const { m_lam, m_turb, m_boil } = standIn(rig);
    expect(standIn({ ...rig, way: "now", m_w: m_lam }).Re).toBeCloseTo(2300, 0);
    expect(standIn({ ...rig, way: "now", m_w: m_turb }).Re).toBeCloseTo(4000, 0);
    expect(standIn({ ...rig, way: "now", m_w: m_boil }).Delta_T_sat_wall).toBeCloseTo(0, 2);
    const rated = coolerAtFlows({ ...rig, known: "rectangular", m_w: 1 });
    expect(rated.m_lam).toBeCloseTo(m_lam as number, 9);
  });

  test("over the inlet temperature", () => {
    const { T_lam, T_turb, T_boil } = standIn({ ...rig, way: "temper" });
    expect(standIn({ ...rig, way: "now", T_w_in: T_lam }).Re).toBeCloseTo(2300, 0);
    expect(standIn({ ...rig, way: "now", T_w_in: T_turb }).Re).toBeCloseTo(4000, 0);
    expect(standIn({ ...rig, way: "now", T_w_in: T_boil }).Delta_T_sat_wall).toBeCloseTo(0, 2);
  });
});

function told(given: StandInGiven) {
  const trace = recording();
  const found = standIn(given, trace);
  return { found, notes: trace.notes };
}

describe("what is out of reach is told with its limit, and what the cooler can make is still there", () => {
  test.each([
    ["colder than the water", { T_3: celsius(20) }, "T_3"],
    ["as poor as no flow makes it", { T_3: celsius(120) }, "T_3"],
    ["an effectiveness that is too good", { target: "effectiveness", P_t: 0.99, T_t_in: celsius(20) }, "P_t"],
    ["no colder than the charge", { T_3: celsius(190) }, "T_3"],
  ] as const)("%s", (_, change, field) => {
    const { found, notes } = told({ ...rig, ...change });
    expect(found.m_w).toBeUndefined();
    expect(found.T_at_least).toBeGreaterThan(found.T_at_most as number);
    const note = notes.find(({ about }) => about === field);
    expect(note?.limit?.kind).toBe("temperature");
    expect(note?.says).toMatch(/bound/);
  });

  test("a supply that is warmer than the water has to be", () => {
    const { found, notes } = told({ ...rig, way: "temper", T_cold: celsius(60) });
    expect(found.T_w_in).toBeUndefined();
    expect(found.T_at_cold).toBeGreaterThan(celsius(60));
    expect(notes.map(({ about }) => about)).toContain("T_cold");
  });

  test.each([
    ["a supply of ice", { way: "temper", T_cold: celsius(-5) }, "T_cold"],
    [
      "what cools the other one is hotter than the charge",
      { target: "effectiveness", P_t: 0.8, T_t_in: celsius(186) },
      "T_t_in",
    ],
    ["a loss as large as the pressure", { target: "ratio", p_2: 9000, D_rho: 1.2 }, "Delta_p_t"],
    ["a gauge pressure for an absolute one", { target: "density", p_m: 90_000, rho_m: 2.8 }, "rho_m"],
    ["no loss", { Delta_p_rig: Number.NaN }, "Delta_p_rig"],
  ] as const)("%s is refused", (_, change, field) => {
    let refused: unknown;
    try {
      standIn({ ...rig, ...change });
    } catch (error) {
      refused = error;
    }
    expect(refused).toBeInstanceOf(DomainError);
    expect((refused as DomainError).field).toBe(field);
  });
});

describe("remarks", () => {
  const about = (change: Partial<StandInGiven>) =>
    told({ ...rig, ...change }).notes.map((note) => note.about);

  test("seawater that scales at the hot wall, and is too slow", () => {
    expect(about({ coolant: "seawater", S: 0.035 })).toEqual(expect.arrayContaining(["T_wall", "c_w"]));
    expect(about({})).not.toContain("c_w");
  });

  test("a match that a valve cannot hold", () => expect(about({ T_3: celsius(50) })).toContain("dT_3_flow"));

  test("a rig that loses more pressure than the other cooler", () => {
    expect(told({ ...rig, Delta_p_rig: 12_000 }).found.Delta_p_add).toBe(-3000);
    expect(about({ Delta_p_rig: 12_000 })).toContain("Delta_p_add");
  });
});

// In such fine passages a little warmth makes the flow turbulent, which cools the water again: whole rounds swing about for ever.
test("a cooler with passages so fine that rounds do not settle is rated, and its heat balances", () => {
  const fine = { ...rig, known: "round", d: 0.001 } as const;
  for (const m_w of [0.0125, 0.0129, 0.0133]) {
    const { Q, C_w, T_w_out } = coolerAtFlows({ ...fine, m_w });
    expect(Q / ((C_w as number) * (T_w_out - celsius(22)))).toBeCloseTo(1, 4);
  }
});
