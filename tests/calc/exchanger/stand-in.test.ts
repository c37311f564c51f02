import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type MovingCoolerGiven, rateMovingCooler } from "../../../calc/exchanger/moving-cooler.ts";
import {
  flowOrSide,
  type StandInByFlowGiven,
  standInByFlow,
} from "../../../calc/exchanger/stand-in-by-flow.ts";
import { standInByTempering } from "../../../calc/exchanger/stand-in-by-tempering.ts";
import type { WaterGiven } from "../../../calc/exchanger/water-side.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";
import { runs } from "./sample.ts";

const celsius = (t: number) => t + 273.15;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Coolers by two powers or by their drawing, with any liquid that they may be given. */
const coolers: fc.Arbitrary<MovingCoolerGiven> = fc
  .record({
    arrangement: fc.constantFrom("counter-cross-2", "counterflow", "cross-unmixed", "face-split"),
    coolant: fc.constantFrom("water", "seawater", "ethylene-glycol", "propylene-glycol"),
    m_a: number(0.1, 0.6),
    T_2: number(celsius(110), celsius(200)),
    UA: number(300, 1500),
    n_a: number(0.4, 0.8),
    n_w: number(0.3, 0.85),
    kind: fc.constantFrom("power", "round", "rectangular"),
  })
  .map(({ UA, kind, n_w, ...one }) => ({
    ...one,
    S: 0.035,
    x_g: 0.4,
    p_w: 3e5,
    UA_a_ref: UA,
    m_a_ref: 0.35,
    R_wall: 1e-5,
    ...(kind === "power" && { water: "power", UA_w_ref: 2 * UA, m_w_ref: 1, n_w }),
    ...(kind === "round" && { water: "round", d: 0.008, N_ch: 40, L: 0.4, N_p: 2, r_foul: 1e-4 }),
    ...(kind === "rectangular" && {
      water: "rectangular",
      a_ch: 0.08,
      b_ch: 0.0025,
      N_ch: 15,
      L: 0.2,
      N_p: 2,
      r_foul: 1e-4,
    }),
  })) as fc.Arbitrary<MovingCoolerGiven>;

const inlets = number(celsius(5), celsius(40));
const outlet = (cooler: MovingCoolerGiven, water: Pick<WaterGiven, "m_w" | "T_w_in">) =>
  rateMovingCooler({ ...cooler, ...water }).T_3;

describe("what a moving cooler makes of the air", () => {
  test("is colder with more water", () => {
    fc.assert(
      fc.property(coolers, inlets, number(0.05, 4), number(1.01, 3), (cooler, T_w_in, m_w, more) => {
        expect(outlet(cooler, { m_w: m_w * more, T_w_in })).toBeLessThan(outlet(cooler, { m_w, T_w_in }));
      }),
      runs,
    );
  });

  test("is warmer with warmer water, where the conductance does not answer to its temperature", () => {
    fc.assert(
      fc.property(coolers, inlets, number(0.05, 4), number(0.1, 30), (cooler, T_w_in, m_w, warmer) => {
        fc.pre(cooler.water === "power");
        expect(outlet(cooler, { m_w, T_w_in: T_w_in + warmer })).toBeGreaterThan(
          outlet(cooler, { m_w, T_w_in }),
        );
      }),
      runs,
    );
  });

  test("balances the heat, and the hot wall is between air and water", () => {
    fc.assert(
      fc.property(coolers, inlets, number(0.05, 4), (cooler, T_w_in, m_w) => {
        const { C_a, C_w, T_3, T_w_out, T_wall, Q } = rateMovingCooler({ ...cooler, m_w, T_w_in });
        expect((C_w * (T_w_out - T_w_in)) / (C_a * ((cooler.T_2 ?? 0) - T_3))).toBeCloseTo(1, 9);
        expect(Q / (C_w * (T_w_out - T_w_in))).toBeCloseTo(1, 9);
        expect(T_wall).toBeGreaterThan(T_w_out);
        expect(T_wall).toBeLessThan(cooler.T_2 ?? 0);
      }),
      runs,
    );
  });
});

describe("a match that was found makes the target when it is run forward", () => {
  test("by its flow", () => {
    fc.assert(
      fc.property(coolers, inlets, number(0.02, 0.98), (cooler, T_w_in, part) => {
        const given = { ...cooler, T_w_in, m_w_least: 0.05, m_w_most: 5 };
        const T_3 =
          part * outlet(cooler, { m_w: 0.05, T_w_in }) + (1 - part) * outlet(cooler, { m_w: 5, T_w_in });
        const { m_w, dT_3_flow } = standInByFlow({ ...given, T_3 });
        expect(outlet(cooler, { m_w, T_w_in })).toBeCloseTo(T_3, 6);
        expect(dT_3_flow).toBeLessThan(0);
      }),
      runs,
    );
  });

  test("by the temperature of its water, which a mixing valve makes", () => {
    fc.assert(
      fc.property(coolers, inlets, number(0.3, 4), (cooler, T_w_in, m_w) => {
        const T_3 = outlet(cooler, { m_w, T_w_in });
        const T_cold = celsius(4);
        const found = standInByTempering({ ...cooler, m_w, T_3, T_cold: Math.min(T_cold, T_w_in) });
        for (const one of [found.T_w_in, ...found.others])
          expect(outlet(cooler, { m_w, T_w_in: one })).toBeCloseTo(T_3, 4);
        const { m_fresh = 0, m_back = 0 } = found;
        expect(m_fresh + m_back).toBeCloseTo(m_w, 9);
        const mean = (m_fresh * Math.min(T_cold, T_w_in) + m_back * found.T_w_out) / m_w;
        expect(mean).toBeCloseTo(found.T_w_in, 6);
      }),
      { numRuns: Math.ceil((runs.numRuns ?? 100) / 4) },
    );
  });
});

const rig: StandInByFlowGiven = {
  arrangement: "counter-cross-2",
  m_a: 0.35,
  T_2: celsius(185),
  coolant: "water",
  p_w: 2e5,
  T_w_in: celsius(22),
  UA_a_ref: 1220,
  m_a_ref: 0.35,
  n_a: 0.5,
  water: "rectangular",
  a_ch: 0.08,
  b_ch: 0.0025,
  N_ch: 15,
  L: 0.2,
  N_p: 2,
  m_w_least: 0.1,
  m_w_most: 3,
  T_3: celsius(50),
};

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

// A worked example, computed with a second program: at 22 degC the light load cannot be made bad enough.
test("a good cooler with cold water cannot be made as poor as one that air cools", () => {
  const light = { ...rig, p_w: 1e5, m_a: 0.12, m_a_ref: 0.12, T_2: celsius(95), UA_a_ref: 686.1 };
  const found = flowOrSide({
    ...light,
    R_wall: 3.1e-6,
    r_foul: 2e-4,
    m_w_least: 0.04,
    m_w_most: 5,
    T_3: celsius(39),
  });
  expect(found.isMet ? "" : found.side).toBe("least flow");
  expect(Math.abs(found.T_at_least - celsius(38.5))).toBeLessThan(0.1);
  expect(Math.abs(found.T_at_most - celsius(22.8))).toBeLessThan(0.1);
});

describe("what no flow makes is refused with the side that limits", () => {
  const reach = flowOrSide(rig);
  test.each([
    ["air inlet", celsius(185), celsius(185)],
    ["water inlet", celsius(22), celsius(22)],
    ["endless flow", reach.T_endless - 0.01, reach.T_endless],
    ["most flow", reach.T_at_most - 0.01, reach.T_at_most],
    ["least flow", reach.T_at_least + 0.01, reach.T_at_least],
  ] as const)("%s", (side, T_3, bound) => {
    const found = flowOrSide({ ...rig, T_3 });
    expect(found.isMet ? "" : found.side).toBe(side);
    const { field, limit, message } = refusal(() => standInByFlow({ ...rig, T_3 }));
    expect(field).toBe("T_3");
    expect(limit?.value).toBeCloseTo(bound, 6);
    expect(message).toMatch(/bound/);
  });

  test.each([
    ["water warmer than the air", { T_w_in: celsius(186) }, "T_w_in"],
    ["bounds of the flow that are swapped", { m_w_least: 3, m_w_most: 1 }, "m_w_most"],
    ["half a channel", { N_ch: 14.5 }, "N_ch"],
    ["a short side that is the long one", { b_ch: 0.1 }, "b_ch"],
    ["no passage", { L: 0 }, "L"],
    ["no number", { m_a: Number.NaN }, "m_a"],
    ["a roughness as large as the passage", { k_s: 0.01 }, "k_s"],
  ])("%s", (_, change, field) => {
    expect(refusal(() => standInByFlow({ ...rig, ...change })).field).toBe(field);
  });

  test("a tempered match: too cold, too warm, and a supply that is warmer than the water has to be", () => {
    const tempered = { ...rig, m_w: 1 };
    expect(refusal(() => standInByTempering({ ...tempered, T_3: celsius(10) })).field).toBe("T_3");
    expect(refusal(() => standInByTempering({ ...tempered, T_3: celsius(190) })).field).toBe("T_3");
    expect(refusal(() => standInByTempering({ ...tempered, T_3: celsius(-10) })).field).toBe("T_3");
    const { field, limit } = refusal(() => standInByTempering({ ...tempered, T_cold: celsius(60) }));
    expect([field, limit?.value]).toEqual(["T_cold", standInByTempering(tempered).T_w_in]);
  });
});

test("of several inlet temperatures that serve, one beside the transition is taken, as far as the supply can make it", () => {
  const tempered = { ...rig, m_w: 1.4, r_foul: 0, R_wall: 3.1e-6, T_3: celsius(44.3) };
  const { T_w_in, others, Re = 0 } = standInByTempering(tempered);
  expect(others).toHaveLength(2);
  expect(Re).toBeLessThan(2300);
  const [middle = 0] = others;
  expect(standInByTempering({ ...tempered, T_cold: T_w_in + 0.1 }).T_w_in).toBe(middle);
});

test("a flow between laminar and turbulent is noted", () => {
  const trace = recording();
  const { Re = 0 } = rateMovingCooler({ ...rig, m_w: 1.5 }, trace);
  expect(Re).toBeGreaterThan(2300);
  expect(Re).toBeLessThan(4000);
  expect(trace.notes.map(({ about }) => about)).toContain("Re");
});

test("a hot wall that boils while the stream does not is noted", () => {
  const trace = recording();
  const { Delta_T_sat = 0, Delta_T_sat_wall = 0 } = rateMovingCooler({ ...rig, p_w: 1.1e5, m_w: 0.3 }, trace);
  expect(Delta_T_sat).toBeGreaterThan(0);
  expect(Delta_T_sat_wall).toBeLessThan(0);
  expect(trace.notes.map(({ about }) => about)).toContain("T_wall");
});
