import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CoolerGain, type CoolerGainGiven, coolerGain } from "../../../calc/charge/cooler-gain.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 60) };

/* Hill-climb four, worked by an independent program. */
const hillClimb = {
  p_1: 98e3,
  T_1: 298.15,
  r: 2.24936,
  efficiency: "isentropic",
  eta_s: 0.72,
  heatCapacity: "real",
  cooler: "effectiveness",
  P: 0.78,
  T_w_in: 298.15,
  Delta_p_23: 9e3,
  m_a: 0.24303,
  drive: "crankshaft",
  eta_b: 0.95,
} as const satisfies CoolerGainGiven;

const turbo = {
  ...hillClimb,
  drive: "exhaust",
  eta_T: 0.7,
  eta_m: 0.97,
  T_g: 1173.15,
  p_T_out: 104e3,
  kappa_g: 1.33,
  c_p_g: 1150,
  lambda: 0.85,
  AFR_st: 14.6,
} as const satisfies CoolerGainGiven;

const cases = fc.record({
  p_1: fc.double({ min: 60e3, max: 110e3, noNaN: true }),
  T_1: fc.double({ min: 260, max: 320, noNaN: true }),
  w: fc.constantFrom(0, 0, 0.01, 0.03),
  r: fc.double({ min: 1.2, max: 4, noNaN: true }),
  efficiency: fc.constantFrom("isentropic", "polytropic"),
  eta_s: fc.double({ min: 0.5, max: 0.95, noNaN: true }),
  eta_p: fc.double({ min: 0.6, max: 0.95, noNaN: true }),
  heatCapacity: fc.constantFrom("real", "constant"),
  kappa: fc.constant(1.4),
  cooler: fc.constantFrom("effectiveness", "temperature"),
  P: fc.double({ min: 0.2, max: 0.95, noNaN: true }),
  T_w_in: fc.double({ min: 278, max: 310, noNaN: true }),
  T_3: fc.double({ min: 285, max: 325, noNaN: true }),
  Delta_p_23: fc.double({ min: 0, max: 15e3, noNaN: true }),
  m_a: fc.double({ min: 0.05, max: 2, noNaN: true }),
  drive: fc.constant("crankshaft"),
  eta_b: fc.constant(0.95),
}) as fc.Arbitrary<CoolerGainGiven>;

/** Tries a property of the cases that are not refused. */
const holds = (property: (given: CoolerGainGiven, found: CoolerGain) => void) =>
  fc.assert(
    fc.property(cases, (given) => {
      let found: CoolerGain;
      try {
        found = coolerGain(given);
      } catch (error) {
        if (error instanceof DomainError) return;
        throw error;
      }
      property(given, found);
    }),
    runs,
  );

/** The pressure ratio at which the cooled engine has what is wanted, by bisection: an own search, for the tests. */
function ratioWhere(given: CoolerGainGiven, isEnough: (found: CoolerGain) => boolean): number {
  let [low, high] = [1, 10];
  for (let i = 0; i < 60; i++) {
    const r = (low + high) / 2;
    if (isEnough(coolerGain({ ...given, r }))) high = r;
    else low = r;
  }
  return (low + high) / 2;
}

describe("same compressor outlet", () => {
  test("at the break-even loss the charge is as dense as before the cooler; below denser, above thinner", () => {
    holds((given, { Delta_p_outlet: even }) => {
      if (even === undefined) return;
      const at = (Delta_p_23: number) => coolerGain({ ...given, Delta_p_23 }).D_outlet;
      expect(at(even)).toBeCloseTo(1, 9);
      expect(at(0.9 * even)).toBeGreaterThan(1);
      expect(at(1.1 * even)).toBeLessThan(1);
    });
  });

  test("the break-even loss of dry air is the outlet pressure times the part of its temperature that the air loses", () => {
    holds((given, found) => {
      if (given.w !== 0 || found.Delta_p_outlet === undefined) return;
      const { p_outlet = 0, T_outlet = 1, T_cooled = 0 } = found;
      expect(found.Delta_p_outlet).toBeCloseTo(p_outlet * (1 - T_cooled / T_outlet), 6);
    });
  });

  test("water that drips off in the cooler lets it lose more", () => {
    const damp = { ...hillClimb, w: 0.03, P: 0.95, T_w_in: 283.15 };
    const { Delta_p_outlet = 0, p_outlet = 0, T_outlet = 1, T_cooled = 0 } = coolerGain(damp);
    expect(Delta_p_outlet).toBeGreaterThan(p_outlet * (1 - T_cooled / T_outlet) + 100);
    expect(coolerGain({ ...damp, Delta_p_23: Delta_p_outlet }).D_outlet).toBeCloseTo(1, 9);
  });

  test("without the cooler the engine draws less by the density, and so does its compressor", () => {
    holds((given, found) => {
      if (given.w !== 0) return;
      expect((found.W_c_cooled ?? 0) / (found.W_c_outlet ?? 1)).toBeCloseTo(found.D_outlet, 9);
    });
  });
});

describe("same manifold pressure", () => {
  test("both have it, and the cooled compressor works harder for each kilogram by what makes up for the loss", () => {
    holds((given, found) => {
      if (found.D_pressure === undefined) return;
      expect(found.p_pressure).toBeCloseTo(found.p_cooled ?? 0, 6);
      if (given.Delta_p_23 === 0) expect(found.more_pressure).toBeCloseTo(0, 6);
      else expect(found.more_pressure).toBeGreaterThan(-1e-6);
    });
  });

  test("at the break-even loss, made up for by the compressor, nothing is left of the gain", () => {
    holds((given, found) => {
      const even = found.Delta_p_pressure;
      if (even === undefined || found.p_cooled === undefined) return;
      const at = (Delta_p_23: number) => {
        const r = ((found.p_cooled ?? 0) + Delta_p_23) / (given.p_1 ?? 1);
        return r > 10 ? undefined : coolerGain({ ...given, r, Delta_p_23 }).D_pressure;
      };
      expect(at(even) ?? 1).toBeCloseTo(1, 8);
      expect(at(0.9 * even) ?? 2).toBeGreaterThan(1);
      expect(at(1.1 * even) ?? 0).toBeLessThan(1);
    });
  });

  test("with a weak cooler it is within reach, and tried", () => {
    const weak = { ...hillClimb, P: 0.15 };
    const found = coolerGain(weak);
    const even = found.Delta_p_pressure ?? 0;
    expect(even).toBeGreaterThan(9e3);
    expect(even).toBeLessThan(200e3);
    const r = ((found.p_cooled ?? 0) + even) / weak.p_1;
    expect(coolerGain({ ...weak, r, Delta_p_23: even }).D_pressure).toBeCloseTo(1, 9);
  });

  test("a note tells where no single compressor could make up for it", () => {
    const ratioOf = (change: Partial<CoolerGainGiven>) => {
      const trace = recording();
      const { Delta_p_pressure = 0, p_cooled = 0 } = coolerGain({ ...hillClimb, ...change }, trace);
      const note = trace.notes.find(({ about, limit }) => about === "Delta_p_pressure" && limit);
      return { told: note?.limit?.value, r: (p_cooled + Delta_p_pressure) / hillClimb.p_1 };
    };
    const far = ratioOf({});
    expect(far.told).toBe(far.r);
    expect(far.r).toBeGreaterThan(10);
    expect(ratioOf({ P: 0.15 }).told).toBeUndefined();
  });

  test("a cooler of known outlet temperature has no such loss, and the page says so", () => {
    const trace = recording();
    const found = coolerGain({ ...hillClimb, cooler: "temperature", T_3: 321.8 }, trace);
    expect(found.D_pressure).toBeGreaterThan(1);
    expect(found.Delta_p_pressure).toBeUndefined();
    expect(trace.notes.map(({ about }) => about)).toContain("Delta_p_pressure");
  });
});

describe("same density", () => {
  test("the ratio found gives the density back, without a cooler", () => {
    holds((given, found) => {
      if (found.r_density === undefined) return;
      expect(found.rho_density).toBeCloseTo(found.rho_cooled ?? 0, 9);
      if (found.r_density > 10 || given.w !== 0) return;
      // A cooler that does not cool and does not lose is none.
      const none = coolerGain({ ...given, r: found.r_density, cooler: "effectiveness", P: 0, Delta_p_23: 0 });
      expect(none.rho_cooled).toBeCloseTo(found.rho_cooled ?? 0, 9);
      expect((none.W_c_cooled ?? 0) / (found.W_c_density ?? 1)).toBeCloseTo(1, 9);
    });
  });

  test("at the break-even loss both compressors take the same power for the same density", () => {
    holds((given, found) => {
      const even = found.Delta_p_density;
      if (even === undefined || (found.r_density ?? 99) > 9.5) return;
      const given_ = { ...given, Delta_p_23: even };
      const enough = (one: CoolerGain) => (one.rho_cooled ?? 0) >= (found.rho_cooled ?? 0);
      const isRefused = (r: number) => {
        try {
          coolerGain({ ...given_, r });
          return false;
        } catch {
          return true;
        }
      };
      if (isRefused(1)) return;
      const r = ratioWhere(given_, enough);
      const at = coolerGain({ ...given_, r });
      // The flow into the engine is the same; that into the compressor brought the water that drips off.
      const perCharge = (at.W_c_cooled ?? 0) / (at.W_c_density ?? 1);
      expect(perCharge).toBeCloseTo(1, 6);
    });
  });

  test("of dry air it is the break-even loss behind the compressor of the engine without a cooler", () => {
    holds((given, found) => {
      if (given.w !== 0 || found.Delta_p_density === undefined || given.cooler !== "effectiveness") return;
      const { p_density = 0, T_density = 1 } = found;
      const cooled = T_density - (given.P ?? 0) * (T_density - (given.T_w_in ?? 0));
      expect(found.Delta_p_density).toBeCloseTo(p_density * (1 - cooled / T_density), 4);
    });
  });

  test("a loss below break-even saves work exactly where it gains air", () => {
    holds((given, found) => {
      if (given.w !== 0 || found.saved_density === undefined) return;
      if (Math.abs(found.D_outlet - 1) < 1e-6) return;
      expect(found.saved_density > 0).toBe(found.D_outlet > 1);
    });
  });
});

describe("what drives the compressor", () => {
  test("the crankshaft gives more than the compressor takes", () => {
    const { W_b_cooled = 0, W_c_cooled = 0, W_b_density = 0, W_c_density = 0 } = coolerGain(hillClimb);
    expect(0.95 * W_b_cooled).toBeCloseTo(W_c_cooled, 8);
    expect(0.95 * W_b_density).toBeCloseTo(W_c_density, 8);
  });

  test("the turbine is held back most where the compressor works hardest", () => {
    const { p_T_cooled = 0, p_T_outlet = 0, p_T_pressure = 0, p_T_density = 0, ...found } = coolerGain(turbo);
    expect(p_T_density).toBeGreaterThan(p_T_cooled);
    expect(p_T_outlet).toBeCloseTo(p_T_cooled, 6);
    expect(p_T_pressure).toBeLessThan(p_T_cooled);
    expect(found.p_gx_cooled).toBeCloseTo((found.p_cooled ?? 0) - p_T_cooled, 6);
  });

  test("a far expansion is told of the engine that asks for it, though the working has another", () => {
    const trace = recording();
    coolerGain({ ...turbo, T_g: 700, eta_T: 0.5 }, trace);
    const told = trace.notes.filter(({ says }) => says.includes("single wheel")).map(({ about }) => about);
    expect(told).toEqual(["p_T_density"]);
  });

  test("an engine that its turbine could not serve is left out, with a sentence", () => {
    const trace = recording();
    const found = coolerGain({ ...turbo, T_g: 500, eta_T: 0.5 }, trace);
    expect(found.p_T_cooled).toBeDefined();
    expect(found.p_T_density).toBeUndefined();
    expect(trace.notes.map(({ about }) => about)).toContain("p_T_density");
  });

  test("exhaust that cannot drive even the cooled engine is refused, with the temperature that would do", () => {
    const refusal = (T_g: number) => {
      try {
        coolerGain({ ...turbo, T_g, eta_T: 0.3 });
      } catch (error) {
        if (error instanceof DomainError) return error;
        throw error;
      }
      return undefined;
    };
    const { field, limit } = refusal(500) ?? {};
    expect(field).toBe("T_g");
    const T_g = limit?.value ?? 0;
    expect(refusal(T_g * (1 - 1e-9))).toBeDefined();
    expect(refusal(T_g * (1 + 1e-9))).toBeUndefined();
  });
});

describe("where the cooler does not pay", () => {
  const notes = (change: Partial<CoolerGainGiven>) => {
    const trace = recording();
    const found = coolerGain({ ...hillClimb, ...change }, trace);
    return { found, notes: trace.notes };
  };

  test("above break-even a note at the loss says that it costs more air than it earns", () => {
    const { found, notes: told } = notes({ Delta_p_23: 50e3 });
    const note = told.find(({ about }) => about === "Delta_p_23");
    expect(note?.limit?.value).toBe(found.Delta_p_outlet);
    expect(notes({ Delta_p_23: 40e3 }).notes.some(({ about }) => about === "Delta_p_23")).toBe(false);
  });

  test("water hotter than the air has no break-even", () => {
    const { found, notes: told } = notes({ T_w_in: 430, P: 0.5 });
    expect(found.D_outlet).toBeLessThan(1);
    expect([found.Delta_p_outlet, found.Delta_p_pressure, found.Delta_p_density]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(told.map(({ about }) => about)).toContain("T_w_in");
  });

  test("a manifold below the inlet leaves two comparisons out", () => {
    const { found, notes: told } = notes({ Delta_p_23: 150e3 });
    expect([found.D_pressure, found.r_density]).toEqual([undefined, undefined]);
    expect(told.map(({ about }) => about)).toEqual(expect.arrayContaining(["D_pressure", "r_density"]));
  });
});

test("a traced run gives the same numbers", () => {
  holds((given, found) => expect(coolerGain(given, recording())).toStrictEqual(found));
  expect(coolerGain(turbo, recording())).toStrictEqual(coolerGain(turbo, plain));
});

test("what cannot be is refused at its field", () => {
  const refused = (change: Partial<CoolerGainGiven>) => {
    try {
      coolerGain({ ...hillClimb, ...change });
    } catch (error) {
      if (error instanceof DomainError) return error.field;
      throw error;
    }
    return "nothing";
  };
  expect(refused({ Delta_p_23: 300e3 })).toBe("Delta_p_23");
  expect(refused({ cooler: "temperature", T_3: 500 })).toBe("T_3");
  expect(refused({ P: 1.1 })).toBe("P");
  expect(refused({ eta_b: 0 })).toBe("eta_b");
  expect(refused({ m_a: 0 })).toBe("m_a");
  expect(refused({ drive: "exhaust" })).toBe("eta_T");
});
