import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ChargePathGiven, chargePath } from "../../../calc/charge/charge-path.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const celsius = (T: number) => T - 273.15;

/* Irrigation pump engine, worked by an independent program. */
const pump: ChargePathGiven = {
  p_0: 99e3,
  T_0: 298.15,
  humidity: "dry",
  Delta_p_01: 0,
  wanted: "ratio",
  r: 2.2,
  efficiency: "isentropic",
  eta_s: 0.74,
  heatCapacity: "real",
  cooler: "temperature",
  T_3: 323.15,
  Delta_p_23: 6e3,
  V_d: 4.4e-3,
  n: 2000 / 60,
  cycle: "four-stroke",
  eta_v: 0.92,
};

/* Hill-climb four, worked by an independent program. */
const hillClimb: ChargePathGiven = {
  p_0: 98e3,
  T_0: 298.15,
  humidity: "dry",
  Delta_p_01: 0,
  wanted: "power",
  W_e: 235e3,
  b: 300 / 3.6e9,
  lambda: 0.85,
  AFR_st: 14.6,
  efficiency: "isentropic",
  eta_s: 0.72,
  heatCapacity: "real",
  cooler: "effectiveness",
  P: 0.78,
  T_w_in: 298.15,
  Delta_p_23: 9e3,
  V_d: 2e-3,
  n: 6500 / 60,
  cycle: "four-stroke",
  eta_v: 0.98,
};

describe("pump engine", () => {
  it("meets the worked numbers to their last digit", () => {
    const out = chargePath(pump);
    expect(celsius(out.T_2s)).toBeCloseTo(100.102, 3);
    expect(celsius(out.T_2)).toBeCloseTo(126.36, 2);
    expect(out.Delta_h / 1e3).toBeCloseTo(102.253, 3);
    expect(out.eta_p).toBeCloseTo(0.7668, 4);
    expect(out.rho_1).toBeCloseTo(1.1568, 4);
    expect(out.rho_2).toBeCloseTo(1.8993, 4);
    expect(out.rho_3).toBeCloseTo(2.2834, 4);
    expect(out.D_rho_uncooled).toBeCloseTo(1.6418, 4);
    expect(out.D_rho).toBeCloseTo(1.9739, 4);
    expect(out.m_a_uncooled).toBeCloseTo(0.12814, 5);
    expect(out.m_a).toBeCloseTo(0.15405, 5);
    expect(out.W_c / 1e3).toBeCloseTo(15.75, 2);
    expect(out.Q / 1e3).toBeCloseTo(11.88, 2);
  });

  it("with constant heat capacity too", () => {
    const out = chargePath({ ...pump, heatCapacity: "constant", kappa: 1.4 });
    expect(celsius(out.T_2)).toBeCloseTo(126.8, 2);
    // c_p = 287.0432 * 3.5 J/(kg K), by hand.
    expect(out.Q / (out.m_a * (out.T_2 - out.T_3))).toBeCloseTo(1004.651, 2);
  });
});

describe("hill-climb four, from the wanted power", () => {
  it("with the cooler", () => {
    const out = chargePath(hillClimb);
    expect((out.m_f ?? 0) * 1e3).toBeCloseTo(19.5833, 4);
    expect(out.m_a).toBeCloseTo(0.24303, 5);
    expect(out.m_a / (out.m_f ?? 0)).toBeCloseTo(12.41, 2);
    expect(out.rho_3).toBeCloseTo(2.2891, 4);
    expect(out.r).toBeCloseTo(2.24936, 5);
    expect(out.p_2 / 1e3).toBeCloseTo(220.44, 2);
    expect(out.p_g / 1e3).toBeCloseTo(113.44, 2);
    expect(celsius(out.T_2)).toBeCloseTo(132.423, 3);
    expect(celsius(out.T_3)).toBeCloseTo(48.633, 3);
    expect(out.Q / 1e3).toBeCloseTo(20.571, 3);
    expect(out.W_c / 1e3).toBeCloseTo(26.346, 3);
    expect(out.D_rho).toBeCloseTo(1.99906, 5);
    expect(out.D_rho_uncooled).toBeCloseTo(1.65358, 5);
  });

  it("without it", () => {
    const out = chargePath({ ...hillClimb, cooler: "none" });
    expect(out.r).toBeCloseTo(3.0236, 4);
    expect(celsius(out.T_2)).toBeCloseTo(177.81, 2);
    expect(out.W_c / 1e3).toBeCloseTo(37.58, 2);
    expect([out.p_3, out.T_3, out.Q]).toEqual([out.p_2, out.T_2, 0]);
  });

  it("wanted density and ratio give the same state back", () => {
    const out = chargePath(hillClimb);
    const { wanted: _, ...rest } = hillClimb;
    const byDensity = chargePath({ ...rest, wanted: "density", rho_m: out.rho_3 });
    const byRatio = chargePath({ ...rest, wanted: "ratio", r: out.r });
    expect(byDensity.r).toBeCloseTo(out.r, 9);
    expect(byRatio.W_e).toBeCloseTo(235e3, 4);
  });
});

/* Island ferry, worked by an independent program with another enhancement factor: see the test of humidity. */
describe("a warm, wet place", () => {
  const ferry: ChargePathGiven = {
    p_0: 100.6e3,
    T_0: 306.15,
    humidity: "relative",
    varphi_0: 0.85,
    wanted: "ratio",
    r: 280 / 100.6,
    efficiency: "isentropic",
    eta_s: 0.75,
    heatCapacity: "real",
    cooler: "temperature",
    T_3: 311.15,
    Delta_p_23: 0,
    V_d: 40e-3,
    n: 20,
    cycle: "four-stroke",
    eta_v: 0.9,
  };
  const out = chargePath(ferry);

  it("condenses as the worked example does, scaled to its air flow", () => {
    const dry = 1.1 / 1.0277557;
    expect(Math.abs(((out.m_c / out.m_da) * dry) / 13.385e-3 - 1)).toBeLessThan(3e-3);
    expect(Math.abs(((out.Q_l / out.m_da) * dry) / 32.27e3 - 1)).toBeLessThan(3e-3);
    expect(celsius(out.T_dp_3 ?? 0)).toBeCloseTo(49.15, 1);
  });

  it("balances water and heat", () => {
    expect(out.m_da * (out.w_0 - out.w_3)).toBeCloseTo(out.m_c, 12);
    expect(out.Q).toBeCloseTo(out.Q_s + out.Q_l, 6);
    expect(out.w_2).toBe(out.w_0);
  });

  it("finds the ratio with condensation inside the search", () => {
    const back = chargePath({ ...ferry, wanted: "density", rho_m: out.rho_3 });
    expect(back.r).toBeCloseTo(ferry.r ?? 0, 8);
    expect(back.m_c).toBeCloseTo(out.m_c, 9);
    const fuel = { b: 200 / 3.6e9, lambda: 1.8, AFR_st: 14.5 };
    const W_e = chargePath({ ...ferry, ...fuel }).W_e;
    expect(chargePath({ ...ferry, ...fuel, wanted: "power", W_e }).r).toBeCloseTo(ferry.r ?? 0, 8);
  });
});

describe("the words of the working", () => {
  const moist = { humidity: "relative", varphi_0: 0.6 } as const;
  const stepsOf = (given: ChargePathGiven) => {
    const trace = recording();
    const out = chargePath(given, trace);
    return { out, steps: trace.steps, notes: trace.notes };
  };

  it("speak of no cooler where there is none, and compute nothing twice", () => {
    for (const wanted of ["ratio", "power"] as const) {
      const { out, steps, notes } = stepsOf({
        ...hillClimb,
        ...moist,
        wanted,
        r: 1.02,
        W_e: 150e3,
        cooler: "none",
        Delta_p_01: 4e3,
      });
      expect(steps.filter(({ where }) => where.includes("cool"))).toEqual([]);
      expect(notes.filter(({ says }) => says.includes("cool"))).toEqual([]);
      const flows = steps.filter(({ relation }) => relation === "engine/air-flow");
      expect(flows.map(({ where }) => where)).toEqual(["engine, manifold"]);
      const ratios = steps.filter(({ relation }) => relation === "compression/density-ratio");
      expect(ratios.map(({ where }) => where)).toEqual(["over the compressor"]);
      expect([out.m_a_uncooled, out.D_rho_uncooled]).toEqual([out.m_a, out.D_rho]);
    }
  });

  it("say with a cooler which side of it is meant", () => {
    const { out, steps } = stepsOf({ ...hillClimb, ...moist });
    const flows = steps.filter(({ relation }) => relation === "engine/air-flow");
    expect(flows.map(({ where, value }) => [where, value])).toEqual([
      ["engine, after the cooler", out.m_a],
      ["engine, without the cooler", out.m_a_uncooled],
    ]);
    expect(out.m_a).toBeGreaterThan(out.m_a_uncooled ?? Number.NaN);
  });
});

describe("where nothing happens", () => {
  const idle: ChargePathGiven = {
    ...pump,
    r: 1,
    Delta_p_01: 1e3,
    humidity: "relative",
    varphi_0: 0.5,
    T_3: pump.T_0,
  };
  const heatCapacities = [{ heatCapacity: "real" }, { heatCapacity: "constant", kappa: 1.4 }] as const;

  it.each(heatCapacities)("no heat is taken out, to the last bit: %o", (heatCapacity) => {
    const coolers = [{}, { cooler: "effectiveness", P: 0.78, T_w_in: idle.T_0 }] as const;
    for (const cooler of coolers) {
      const out = chargePath({ ...idle, ...heatCapacity, ...cooler });
      expect([out.T_2, out.T_3]).toEqual([idle.T_0, idle.T_0]);
      expect([out.Q, out.Q_s, out.Q_l, out.W_c]).toEqual([0, 0, 0, 0]);
    }
  });

  it("air and water of one temperature have no effectiveness", () => {
    expect(chargePath({ ...idle, T_w_in: idle.T_0 }).P).toBeUndefined();
    expect(chargePath({ ...idle, T_w_in: idle.T_0 - 1e-10 }).P).toBeUndefined();
    expect(chargePath({ ...idle, T_w_in: idle.T_0 - 1 }).P).toBe(0);
    expect(chargePath({ ...pump, T_w_in: pump.T_3 }).P).toBe(1);
  });
});

describe("notes", () => {
  const about = (given: ChargePathGiven) => {
    const trace = recording();
    chargePath(given, trace);
    return trace.notes.map((note) => note.about);
  };

  it("say what is unusual and keep the number", () => {
    expect(about({ ...pump, r: 1.01, Delta_p_01: 5e3, T_3: 295 })).toContain("p_m");
    expect(about({ ...hillClimb, wanted: "ratio", r: 1.1, T_w_in: 350 })).toContain("T_w_in");
    expect(about({ ...pump, r: 8 })).toContain("rho_2");
    expect(about(hillClimb)).toContain("r");
    expect(about(pump)).toEqual([]);
  });

  it("working records one pass only, and the same numbers", () => {
    const trace = recording();
    expect(chargePath(hillClimb, trace)).toEqual(chargePath(hillClimb, plain));
    expect(trace.steps.filter((step) => step.relation === "compression/outlet-pressure")).toHaveLength(1);
    const needed = trace.steps.find((step) => step.relation === "engine/needed-density");
    const found = trace.steps.filter((step) => step.relation === "fluids/density").at(-1);
    expect(found?.value).toBeCloseTo(needed?.value ?? 0, 9);
  });
});

describe("what cannot be", () => {
  const cases: readonly (readonly [string, Partial<ChargePathGiven>, string])[] = [
    ["efficiency above 1", { eta_s: 1.2 }, "eta_s"],
    ["ratio below 1", { wanted: "ratio", r: 0.8 }, "r"],
    ["ratio above the search", { wanted: "ratio", r: 11 }, "r"],
    ["relative humidity above 1", { humidity: "relative", varphi_0: 1.2 }, "varphi_0"],
    ["inlet loss beyond the barometer", { Delta_p_01: 98e3 }, "Delta_p_01"],
    ["cooler loss beyond the pressure", { wanted: "ratio", r: 1.5, Delta_p_23: 150e3 }, "Delta_p_23"],
    ["effectiveness above 1", { P: 1.1 }, "P"],
    ["no water temperature", { T_w_in: undefined }, "T_w_in"],
    ["cooler outlet colder than water", { cooler: "temperature", T_3: 290 }, "T_3"],
    ["cooler outlet hotter than inlet", { cooler: "temperature", wanted: "ratio", r: 1.5, T_3: 400 }, "T_3"],
    ["power below a throttle", { W_e: 10e3 }, "W_e"],
    ["power beyond the search", { W_e: 2e6 }, "W_e"],
    ["density below ambient", { wanted: "density", rho_m: 0.9 }, "rho_m"],
    ["density beyond the search", { wanted: "density", rho_m: 15 }, "rho_m"],
    ["no fuel", { b: undefined }, "b"],
    ["no speed", { n: 0 }, "n"],
  ];

  it.each(cases)("%s", (_, change, field) => {
    try {
      chargePath({ ...hillClimb, ...change });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
      expect((error as DomainError).message).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it("the bound that a wish ran into can itself be had", () => {
    for (const W_e of [10e3, 2e6]) {
      try {
        chargePath({ ...hillClimb, W_e });
        expect.unreachable();
      } catch (error) {
        const bound = (error as DomainError).limit;
        expect(bound?.kind).toBe("power");
        const inside = (bound?.value ?? 0) * (W_e < 1e5 ? 1.000001 : 0.999999);
        expect(chargePath({ ...hillClimb, W_e: inside }).r).toBeCloseTo(W_e < 1e5 ? 1 : 10, 3);
      }
    }
  });

  it("the ratios named in sentences are those that are accepted", () => {
    const messageOf = (change: Partial<ChargePathGiven>) => {
      try {
        chargePath({ ...hillClimb, ...change });
        return expect.unreachable();
      } catch (error) {
        return error as DomainError;
      }
    };
    const tooMuch = messageOf({ W_e: 2e6 });
    const highest = Number(/ratio above ([\d.]+)/.exec(tooMuch.message)?.[1]);
    const lowest = Number(/ratio below ([\d.]+)/.exec(messageOf({ W_e: 10e3 }).message)?.[1]);
    expect(messageOf({ wanted: "ratio", r: highest + 1e-6 }).limit?.value).toBe(highest);
    expect(messageOf({ wanted: "ratio", r: lowest - 1e-6 }).limit?.value).toBe(lowest);
    const most = chargePath({ ...hillClimb, wanted: "ratio", r: highest });
    expect((most.W_e ?? 0) / (tooMuch.limit?.value ?? 1)).toBeCloseTo(1, 9);
    const trace = recording();
    chargePath(hillClimb, trace);
    expect(trace.notes[0]?.says).toContain(`from ${lowest} to ${highest} `);
  });

  it("any input gives finite numbers or a sentence", () => {
    const number = (min: number, max: number) => fc.double({ min, max });
    fc.assert(
      fc.property(
        fc.record({
          p_0: number(-1e4, 250e3),
          T_0: number(150, 400),
          humidity: fc.constantFrom("dry", "relative", "dew-point", "wet-bulb"),
          varphi_0: number(-0.1, 1.1),
          T_dp_0: number(150, 400),
          T_wb_0: number(150, 400),
          Delta_p_01: number(-1e3, 120e3),
          wanted: fc.constantFrom("ratio", "density", "power"),
          r: number(0.5, 11),
          rho_m: number(-1, 20),
          W_e: number(-1, 2e6),
          efficiency: fc.constantFrom("isentropic", "polytropic"),
          eta_s: number(-0.1, 1.1),
          eta_p: number(-0.1, 1.1),
          heatCapacity: fc.constantFrom("real", "constant"),
          kappa: number(1, 1.7),
          cooler: fc.constantFrom("none", "effectiveness", "temperature"),
          P: number(-0.1, 1.1),
          T_w_in: number(200, 500),
          T_3: number(150, 1100),
          Delta_p_23: number(-1e3, 300e3),
          V_d: number(-1e-3, 0.1),
          n: number(-1, 300),
          cycle: fc.constantFrom("four-stroke", "two-stroke"),
          eta_v: number(-0.1, 2.1),
          b: number(-1e-9, 2e-7),
          lambda: number(0.2, 4),
          AFR_st: number(0.5, 41),
        }),
        (given) => {
          try {
            const out = chargePath(given);
            for (const value of Object.values(out))
              if (value !== undefined) expect(value).toSatisfy(Number.isFinite);
          } catch (error) {
            if (!(error instanceof DomainError)) throw error;
            expect(error.field).not.toBe("");
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});

/* Quarry loader: an engine-driven compressor before a turbocharger, worked by an independent program. */
describe("two stages", () => {
  const loader: ChargePathGiven = {
    p_0: 100e3,
    T_0: 298.15,
    humidity: "dry",
    stages: "two",
    wanted: "ratio",
    r: 2.0664,
    r_2: 2.12819,
    efficiency: "isentropic",
    eta_s: 0.6,
    eta_s_2: 0.76,
    heatCapacity: "real",
    cooler: "effectiveness",
    P: 0.8,
    T_w_in: 303.15,
    Delta_p_23: 6e3,
    Delta_T_w: 8,
    cooler_45: "effectiveness",
    P_45: 0.85,
    T_w_in_45: 303.15,
    Delta_p_45: 7e3,
    Delta_T_w_45: 10,
    V_d: 12.4e-3,
    n: 25,
    cycle: "four-stroke",
    eta_v: 0.9,
  };
  const wet: ChargePathGiven = { ...loader, P: 0.95, T_0: 306.15, humidity: "relative", varphi_0: 0.85 };

  it("meets the worked numbers of equal ratios", () => {
    const out = chargePath(loader);
    expect(celsius(out.T_2)).toBeCloseTo(138.94, 2);
    expect(celsius(out.T_3)).toBeCloseTo(51.79, 2);
    expect(celsius(out.T_4 ?? 0)).toBeCloseTo(154.01, 2);
    expect(celsius(out.T_m)).toBeCloseTo(48.6, 2);
    expect(out.rho_m).toBeCloseTo(4.5476, 4);
    expect((out.W_c12 ?? 0) / out.m_a / (135.426e3 / 0.62)).toBeCloseTo(1, 5);
  });

  it("loses each loss before the next ratio multiplies", () => {
    const { p_2, p_3, p_4, p_5, p_m } = chargePath(loader);
    expect(p_3).toBeCloseTo(p_2 - 6e3, 6);
    expect(p_4).toBeCloseTo(2.12819 * p_3, 5);
    expect(p_5).toBeCloseTo((p_4 ?? 0) - 7e3, 6);
    expect(p_m).toBe(p_5);
  });

  it("without a second compressor to speak of is the path of one stage", () => {
    const two = chargePath({ ...loader, r_2: 1, cooler_45: "none" });
    const one = chargePath({ ...loader, stages: "one" });
    for (const key of ["rho_m", "T_m", "p_m", "m_a", "W_c", "Q"] as const) expect(two[key]).toBe(one[key]);
    expect(two.W_c2).toBe(0);
  });

  it("finds ratios for a wish, in either division", () => {
    const { p_m, rho_m } = chargePath(loader);
    const first = chargePath({ ...loader, wanted: "pressure", division: "first", r_1: 2.0664, p_m });
    expect(first.r_2).toBeCloseTo(2.12819, 9);
    const equal = chargePath({ ...loader, wanted: "density", division: "equal", rho_m });
    expect(equal.r).toBe(equal.r_2);
    expect(equal.rho_m).toBeCloseTo(rho_m, 9);
  });

  it("condenses after each cooler at the pressure there, and the second gets what the first left", () => {
    const out = chargePath(wet);
    expect(out.m_c).toBeGreaterThan(0);
    expect(out.m_c_45).toBeGreaterThan(0);
    expect(out.w_4).toBe(out.w_3);
    expect(out.m_da * (out.w_0 - out.w_3)).toBeCloseTo(out.m_c, 12);
    expect(out.m_da * (out.w_3 - (out.w_5 ?? 0))).toBeCloseTo(out.m_c_45 ?? 0, 12);
    expect(out.T_dp_5).toBeGreaterThan(out.T_5 ?? 0);
  });

  it("gives each cooler the water that carries its duty", () => {
    const out = chargePath(loader);
    expect(out.T_w_out).toBeCloseTo(311.15, 9);
    expect(out.T_w_out_45).toBeCloseTo(313.15, 9);
    expect((out.m_w ?? 0) * 4180 * 8).toBeCloseTo(out.Q, -3);
    expect(((out.m_w_45 ?? 0) * 4180 * 10) / (out.Q_45 ?? 1)).toBeCloseTo(1, 2);
    expect(chargePath({ ...loader, Delta_T_w: 99, r: 1.05 }).m_w).toBeUndefined();
  });

  const cases: readonly (readonly [string, Partial<ChargePathGiven>, string])[] = [
    ["no second ratio", { r_2: undefined }, "r_2"],
    ["a second stage that expands", { r_2: 0.9 }, "r_2"],
    ["no second efficiency", { eta_s_2: undefined }, "eta_s_2"],
    ["second effectiveness above one", { P_45: 1.2 }, "P_45"],
    ["second outlet hotter than its inlet", { cooler_45: "temperature", T_5: 600 }, "T_5"],
    ["first loss beyond its pressure", { Delta_p_23: 250e3 }, "Delta_p_23"],
    ["second loss beyond its pressure", { Delta_p_45: 500e3 }, "Delta_p_45"],
    [
      "pressure below what the first gives",
      { wanted: "pressure", division: "first", r_1: 3, p_m: 150e3 },
      "p_m",
    ],
    ["pressure beyond the search", { wanted: "pressure", division: "equal", p_m: 12e6 }, "p_m"],
  ];
  it.each(cases)("refuses %s", (_, change, field) => {
    try {
      chargePath({ ...loader, ...change });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
    }
  });
});
