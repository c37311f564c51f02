import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { barometerAltitude } from "../../../calc/atmosphere/barometer-altitude.ts";
import { chargeDensity } from "../../../calc/charge/charge-density.ts";
import { chargePath } from "../../../calc/charge/charge-path.ts";
import { contributions } from "../../../calc/charge/contributions.ts";
import { coolerGain } from "../../../calc/charge/cooler-gain.ts";
import { turbineBalance } from "../../../calc/charge/turbine-balance.ts";
import { compressorOutlet } from "../../../calc/compression/compressor-outlet.ts";
import { airDemand } from "../../../calc/engine/air-demand.ts";
import { measuredLoss } from "../../../calc/flow/measured-loss.ts";
import { waterState } from "../../../calc/fluids/water/water.ts";
import { accept } from "../../../calc/quantity/accept.ts";
import { DomainError, type Limit } from "../../../calc/quantity/domain-error.ts";
import { recording } from "../../../calc/relation/trace.ts";

/*
 * Pages add “The bound is 126.36 °C.” to a sentence that has a bound. That can be understood only where the sentence
 * before it says what the bound is: by that word, or by what the value has to be.
 */
const saysItsBound = /\bthe bound\b|\bIt has to be (at or )?(above|below) [^.]+\.$/;

const relations = Object.entries(
  import.meta.glob<Record<string, unknown>>("../../../calc/**/*.ts", { eager: true }),
).flatMap(([path, module]) =>
  Object.values(module).flatMap((value) => {
    const ranges = (value as { ranges?: readonly { says: string }[] } | undefined)?.ranges ?? [];
    return ranges.map(({ says }) => [path.replace(/.*calc\//, ""), says] as const);
  }),
);

test("the sentence of every range says what its bound is", () => {
  expect(relations.length).toBeGreaterThan(10);
  expect(relations.filter(([, says]) => !saysItsBound.test(says))).toEqual([]);
});

test.each([
  [{ above: 0 }, 0],
  [{ atLeast: 1 }, 0],
  [{ atMost: 1 }, 2],
  [{ below: 1 }, 1],
])("what is refused by %o says where its bound lies", (bounds, value) => {
  expect(() => accept("r", "The pressure ratio", value, { kind: "ratio", ...bounds })).toThrow(saysItsBound);
});

interface Said {
  readonly says: string;
  readonly limit: Limit | undefined;
}

/** All that a model says of one input, in notes and in a refusal. */
function saidOf(
  model: (given: never, trace: ReturnType<typeof recording>) => unknown,
  given: object,
): Said[] {
  const trace = recording();
  const said: Said[] = [];
  try {
    model(given as never, trace);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    said.push({ says: error.message, limit: error.limit });
  }
  return [...said, ...trace.notes.map(({ says, limit }) => ({ says, limit }))];
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const machine = {
  efficiency: fc.constantFrom("isentropic", "polytropic"),
  eta_s: number(-0.1, 1.2),
  eta_p: number(-0.1, 1.2),
  heatCapacity: fc.constantFrom("real", "constant"),
  kappa: number(1, 1.7),
};
const air = {
  p_0: fc.oneof(number(80e3, 105e3), number(-1e4, 250e3)),
  T_0: fc.oneof(number(270, 310), number(150, 450)),
  humidity: fc.constantFrom("dry", "relative", "dew-point", "wet-bulb"),
  varphi_0: number(-0.1, 1.1),
  T_dp_0: number(250, 330),
  T_wb_0: number(250, 330),
};
const engine = {
  V_d: number(1e-3, 0.05),
  n: number(1, 150),
  cycle: fc.constantFrom("four-stroke", "two-stroke"),
  eta_v: number(0.5, 1.2),
  b: fc.constant(7e-8),
  lambda: number(0.4, 3),
  AFR_st: fc.constant(14.6),
};
/** Mostly what models accept, so that they go on to their notes; sometimes anything. */
const mostly = (good: readonly [number, number], any: readonly [number, number]) =>
  fc.oneof({ weight: 15, arbitrary: number(...good) }, { weight: 1, arbitrary: number(...any) });
const inlet = {
  p_1: mostly([80e3, 105e3], [-1e4, 6e6]),
  T_1: mostly([270, 310], [150, 550]),
  w: mostly([0, 0.05], [-0.1, 1.1]),
};
const machineWithin = {
  ...machine,
  eta_s: mostly([0.4, 1], [-0.1, 1.2]),
  eta_p: mostly([0.5, 1], [-0.1, 1.2]),
  kappa: mostly([1.3, 1.45], [1, 1.7]),
};
const turbine = {
  eta_T: mostly([0.3, 0.9], [0, 1.1]),
  eta_m: mostly([0.8, 1], [0, 1.1]),
  T_g: mostly([600, 1300], [200, 1700]),
  p_T_out: mostly([90e3, 120e3], [0, 2e6]),
  kappa_g: mostly([1.25, 1.4], [1, 1.8]),
  c_p_g: mostly([1000, 1300], [300, 4000]),
  lambda: mostly([0.7, 3], [0, 25]),
  AFR_st: fc.constant(14.6),
  x_wg: mostly([0, 0.5], [-0.05, 1]),
};
const cooled = {
  P: mostly([0.05, 1], [-0.1, 1.1]),
  T_w_in: mostly([275, 360], [200, 500]),
  Delta_p_23: mostly([0, 60e3], [-100, 600e3]),
};
const ratio = mostly([1, 4], [0.9, 11]);
const readingOf = (which: "I" | "II") => ({
  [`m_${which}`]: mostly([0.05, 0.2], [1e-4, 1]),
  [`Delta_p_${which}`]: mostly([300, 3000], [1, 200e3]),
  [`p_${which}`]: mostly([95e3, 110e3], [1e4, 6e6]),
  [`T_in_${which}`]: mostly([280, 300], [100, 1100]),
  [`T_out_${which}`]: mostly([280, 300], [100, 1100]),
});

const models = [
  {
    name: "cooler gain",
    model: coolerGain,
    given: fc.record({
      ...inlet,
      ...machineWithin,
      ...turbine,
      ...cooled,
      r: ratio,
      cooler: fc.constantFrom("effectiveness", "temperature"),
      T_3: mostly([280, 330], [100, 1100]),
      m_a: mostly([0.05, 2], [-0.1, 2]),
      drive: fc.constantFrom("crankshaft", "exhaust"),
      eta_b: mostly([0.5, 1], [-0.1, 1.1]),
    }),
  },
  {
    name: "contributions",
    model: contributions,
    given: fc.record({
      ...inlet,
      ...cooled,
      split: fc.constantFrom("hardware", "changes"),
      stages: fc.constantFrom("one", "two"),
      r_1: ratio,
      eta_s: mostly([0.4, 1], [-0.1, 1.2]),
      cooler: fc.constantFrom("effectiveness", "none"),
      r_2: ratio,
      eta_s_2: mostly([0.4, 1], [-0.1, 1.2]),
      cooler_45: fc.constantFrom("effectiveness", "none"),
      P_45: cooled.P,
      T_w_in_45: cooled.T_w_in,
      Delta_p_45: cooled.Delta_p_23,
      n_p: mostly([1, 2], [0.5, 3]),
    }),
  },
  {
    name: "turbine balance",
    model: turbineBalance,
    given: fc.record({
      ...inlet,
      ...machineWithin,
      ...turbine,
      V_d: number(1e-3, 0.05),
      n: number(1, 150),
      m_a: mostly([0.05, 2], [-0.1, 2]),
      known: fc.constantFrom("ratio", "power"),
      r: ratio,
      Delta_p_23: cooled.Delta_p_23,
      W_c: mostly([0, 1e5], [-1e3, 2e8]),
      p_m: mostly([90e3, 500e3], [-1e4, 2e8]),
      T_m: mostly([280, 340], [100, 1100]),
    }),
  },
  {
    name: "measured loss",
    model: measuredLoss,
    given: fc.record({
      readings: fc.constant("two"),
      ...readingOf("I"),
      ...readingOf("II"),
      rho_ref: mostly([1, 1.3], [-1, 2]),
      m_a: mostly([0.05, 2], [1e-4, 20]),
      p_2: mostly([100e3, 400e3], [1e4, 6e6]),
      T_2: mostly([300, 500], [100, 1100]),
      T_3: mostly([290, 350], [100, 1100]),
    }),
  },
  {
    name: "charge path",
    model: chargePath,
    given: fc.record({
      ...air,
      ...machine,
      ...engine,
      Delta_p_01: number(-100, 20e3),
      wanted: fc.constantFrom("ratio", "density", "power"),
      r: number(0.9, 11),
      rho_m: number(-0.1, 12),
      W_e: number(-1, 2e6),
      cooler: fc.constantFrom("none", "effectiveness", "temperature"),
      P: number(-0.1, 1.1),
      T_w_in: number(250, 400),
      T_3: number(250, 500),
      Delta_p_23: number(-100, 300e3),
    }),
  },
  {
    name: "compressor outlet",
    model: compressorOutlet,
    given: fc.record({
      ...machine,
      p_in: number(-1, 3e6),
      T_in: number(160, 1100),
      w: number(-0.01, 0.1),
      boost: fc.constantFrom("ratio", "pressure"),
      r: number(0.5, 55),
      p_out: number(0, 5e6),
      m_a: number(-1, 1),
    }),
  },
  {
    name: "charge density",
    model: chargeDensity,
    given: fc.record({
      p_in: number(50e3, 120e3),
      T_in: number(250, 330),
      r: number(0.9, 6),
      eta_s: number(0.5, 1.1),
      T_3: number(250, 450),
      Delta_p_23: number(-100, 300e3),
    }),
  },
  {
    name: "barometer",
    model: barometerAltitude,
    given: fc.record({
      known: fc.constantFrom("elevation", "station", "sea-level"),
      z: number(-1500, 25e3),
      p_0: number(1e3, 130e3),
      p_Q: number(70e3, 130e3),
    }),
  },
  {
    name: "water",
    model: waterState,
    given: fc.record({
      T: fc.oneof(number(250, 300), number(250, 700)),
      p: fc.oneof(number(-1, 1000), number(1e3, 1e6), number(1e6, 20e6)),
    }),
  },
  {
    name: "air demand",
    model: airDemand,
    given: fc.record({
      ...engine,
      from: fc.constantFrom("displacement", "power"),
      p_m: number(-1, 1e6),
      T_m: number(100, 600),
      w: number(-0.01, 0.05),
      W_e: number(-1, 1e6),
    }),
  },
];

describe.each(models)("$name", ({ model, given }) => {
  test("says what the bound is, in every sentence that has one", () => {
    const bounded = new Set<string>();
    fc.assert(
      fc.property(given as fc.Arbitrary<object>, (one) => {
        for (const { says, limit } of saidOf(model as Parameters<typeof saidOf>[0], one)) {
          if (!limit) {
            expect(says).not.toMatch(/\bthe bound\b/);
            continue;
          }
          bounded.add(says);
          expect(says).toMatch(saysItsBound);
        }
      }),
      { numRuns: Math.max(1000, Number(process.env["FAST_CHECK_RUNS"] ?? 0)) },
    );
    expect(bounded.size).toBeGreaterThan(2);
  });
});
