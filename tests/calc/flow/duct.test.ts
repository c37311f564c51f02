import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { type DuctGiven, duct } from "../../../calc/flow/duct.ts";
import { staticTotal } from "../../../calc/flow/static-total.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { temperatureAtEnthalpy } from "../../../calc/fluids/moist-air.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { bracketedRoot } from "../../../calc/numerics/bracketed-root.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

fc.configureGlobal({ numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) });

const degree = Math.PI / 180;

/** An invented boosted pipe. */
const pipe: DuctGiven = {
  p_in: 260e3,
  T_in: 458.15,
  w: 0,
  m_a: 0.35,
  d: 0.076,
  L: 3,
  surface: "steel",
  k_s: 0.0001,
  N_b: 3,
  bend: "smooth",
  theta: 90 * degree,
  R_b: 1.5,
  inlet: "none",
  R_l: 0.1,
  d_before: 0.1,
  theta_before: 30 * degree,
  outlet: "none",
  d_after: 0.1,
  theta_after: 12 * degree,
  K_o: 0,
  p_0: 100e3,
};

const ducts = fc.record({
  share: fc.double({ min: 0.01, max: 0.95, noNaN: true }),
  p_in: fc.double({ min: 5e4, max: 6e5, noNaN: true }),
  T_in: fc.double({ min: 250, max: 520, noNaN: true }),
  w: fc.double({ min: 0, max: 0.05, noNaN: true }),
  d: fc.double({ min: 0.03, max: 0.3, noNaN: true }),
  L: fc.double({ min: 0, max: 50, noNaN: true }),
  surface: fc.constantFrom("drawn", "hose", "steel", "convoluted"),
  N_b: fc.integer({ min: 0, max: 8 }),
  bend: fc.constantFrom("smooth", "mitre"),
  theta: fc.double({ min: 0, max: 2.5, noNaN: true }),
  R_b: fc.double({ min: 0.5, max: 20, noNaN: true }),
  inlet: fc.constantFrom("none", "sharp", "rounded", "step", "cone"),
  outlet: fc.constantFrom("none", "step", "cone", "plenum"),
  K_o: fc.double({ min: 0, max: 5, noNaN: true }),
});

/** A duct, and a flow of it that is a part of the largest. */
const withFlow = ({ share, ...change }: { share: number } & Partial<DuctGiven>): DuctGiven => {
  const d = change.d ?? pipe.d;
  const given = { ...pipe, ...change, d_before: 1.4 * d, d_after: 1.6 * d };
  const { m_star } = duct({ ...given, m_a: 1e-6 });
  return { ...given, m_a: share * m_star };
};

describe("the loss", () => {
  test("grows with the flow, with the length and with every bend", () => {
    fc.assert(
      fc.property(ducts, (change) => {
        const given = withFlow(change);
        const { Delta_p_tot } = duct(given);
        // What is lost in the last digits of the pressure does not grow.
        if (Delta_p_tot < 1e-9 * given.p_in) return;
        expect(duct({ ...given, m_a: 1.03 * given.m_a }).Delta_p_tot).toBeGreaterThan(Delta_p_tot);
        // Near choking a longer duct would choke.
        if (change.share > 0.3) return;
        expect(duct({ ...given, L: given.L + 1 }).Delta_p_tot).toBeGreaterThan(Delta_p_tot);
        const withBend = duct({ ...given, N_b: given.N_b + 1 }).Delta_p_tot;
        expect(withBend).toBeGreaterThanOrEqual(Delta_p_tot - 1e-13 * given.p_in);
      }),
    );
  });

  test("is nothing without friction and parts", () => {
    const out = duct({ ...pipe, L: 0, N_b: 0 });
    expect([out.Delta_p_tot, out.Delta_p_inc, out.Delta_p_thin]).toEqual([0, 0, 0]);
    expect(out.Ma_end).toBe(out.Ma_in);
    expect(out.p_tot_out).toBe(pipe.p_in);
  });

  test("is that of one density in a slow stream, but for the square of the Mach number", () => {
    for (const outlet of ["none", "plenum", "step"] as const)
      for (const share of [0.01, 0.02, 0.05]) {
        const out = duct(withFlow({ share, outlet }));
        const Lambda = out.Delta_p_inc / out.Delta_p_wall;
        expect(Math.abs(out.Delta_p_thin) / out.Delta_p_tot).toBeLessThan((Lambda + 1) * out.Ma_in ** 2);
      }
  });

  test("in a plenum is all that the bore had above its static pressure", () => {
    const bare = duct(pipe);
    const out = duct({ ...pipe, outlet: "plenum" });
    expect(out.p_tot_out).toBe(bare.p_stat_out);
    expect(out.p_stat_out).toBe(out.p_tot_out);
  });

  test("is the sum of what stands in the picture", () => {
    fc.assert(
      fc.property(ducts, (change) => {
        const out = duct(withFlow(change));
        const sum =
          out.Delta_p_inlet + out.Delta_p_wall + out.Delta_p_bends + out.Delta_p_other + out.Delta_p_outlet;
        expect(sum).toBeCloseTo(out.Delta_p_inc, 6);
        expect(sum + out.Delta_p_thin).toBeCloseTo(out.Delta_p_tot, 6);
        expect(out.p_tot_out + out.Delta_p_tot).toBeCloseTo(change.p_in, 6);
      }),
    );
  });

  test("total pressure never rises, and the air gets faster on its way", () => {
    fc.assert(
      fc.property(ducts, (change) => {
        const out = duct(withFlow(change));
        expect(out.Delta_p_tot).toBeGreaterThan(-1e-6);
        expect(out.Ma_end).toBeGreaterThanOrEqual(out.Ma_in * (1 - 1e-12));
        expect(out.p_stat_out).toBeLessThanOrEqual(out.p_tot_out * (1 + 1e-12));
      }),
    );
  });
});

/**
 * The total pressure behind a step, from momentum and energy with air as it is: the pressure on the ring of the step is
 * that at the end of the bore.
 */
function behindStep(out: { p: number; T_tot: number; m: number; c: number; d: number; d_l: number }): number {
  const [A, A_l] = [out.d, out.d_l].map((d) => (Math.PI * d ** 2) / 4) as [number, number];
  const R = gasConstant.compute({ w: 0 });
  const h = enthalpy.compute({ T: out.T_tot, w: 0 });
  const T = (c: number) => temperatureAtEnthalpy(h - c ** 2 / 2, 0);
  const pressure = (c: number) => (out.m * R * T(c)) / (A_l * c);
  const force = out.p * A_l + out.m * out.c;
  const c = bracketedRoot((x) => pressure(x) * A_l + out.m * x - force, 0.2 * out.c * (A / A_l), out.c, {
    tolerance: 1e-10,
  });
  const s = (at: number) => temperatureEntropy.compute({ T: at, w: 0 });
  return pressure(c) * Math.exp((s(out.T_tot) - s(T(c))) / R);
}

test("a step up loses what momentum and energy say, but for the square of the Mach number", () => {
  for (const m_a of [0.1, 0.35, 0.7, 1]) {
    const bare = duct({ ...pipe, m_a });
    const out = duct({ ...pipe, m_a, outlet: "step" });
    const R = gasConstant.compute({ w: 0 });
    // The static temperature at the end of the bore, from the pressures there.
    const s = (at: number) => temperatureEntropy.compute({ T: at, w: 0 });
    const T = bracketedRoot(
      (x) => s(pipe.T_in) - s(x) - R * Math.log(bare.p_tot_out / bare.p_stat_out),
      0.7 * pipe.T_in,
      pipe.T_in,
      { tolerance: 1e-10 },
    );
    const c = (m_a * R * T) / (bare.p_stat_out * ((Math.PI * pipe.d ** 2) / 4));
    const exact = behindStep({ p: bare.p_stat_out, T_tot: pipe.T_in, m: m_a, c, d: pipe.d, d_l: 0.1 });
    const loss = bare.p_tot_out - out.p_tot_out;
    expect(Math.abs(loss / (bare.p_tot_out - exact) - 1)).toBeLessThan(0.7 * bare.Ma_end ** 2);
  }
});

describe("choking", () => {
  test("the largest flow is the true bound", () => {
    fc.assert(
      fc.property(ducts, ({ share: _, ...change }) => {
        const given = withFlow({ ...change, share: 1 });
        const { m_star } = duct({ ...given, m_a: 0.5 * given.m_a });
        const most = duct({ ...given, m_a: m_star });
        expect(most.Ma_end).toBeGreaterThan(0.999);
        try {
          duct({ ...given, m_a: m_star * (1 + 1e-9) });
          expect.unreachable();
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          expect(error.field).toBe("m_a");
          expect(error.limit?.kind).toBe("massFlow");
          expect((error.limit?.value ?? 0) / m_star).toBeCloseTo(1, 12);
        }
      }),
    );
  });
});

describe("thrust", () => {
  test("doubles with the gauge pressure on a closed end, and is a pull in a vacuum", () => {
    const once = duct({ ...pipe, p_in: 200e3 }).F_e;
    expect(duct({ ...pipe, p_in: 300e3 }).F_e / once).toBeCloseTo(2, 12);
    expect(duct({ ...pipe, p_in: 95e3, m_a: 0.05 }).F_e).toBeLessThan(0);
  });

  test("on a bend of 180° is all that pressure and momentum push, twice", () => {
    const { m_a, p_in, T_in, d, p_0 } = pipe;
    const inlet = staticTotal({
      m_a,
      section: "bore",
      d,
      pressure: "total",
      p: p_in,
      temperature: "total",
      T: T_in,
      r_rec: 1,
    });
    const push = ((inlet.p_stat - p_0) * Math.PI * d ** 2) / 4 + m_a * inlet.c;
    expect(duct({ ...pipe, theta: Math.PI }).F_b).toBeCloseTo(2 * push, 8);
  });

  test("is nothing on a bend of no angle, and told of one bend however many there are", () => {
    expect(duct({ ...pipe, theta: 0 }).F_b).toBe(0);
    expect(duct({ ...pipe, N_b: 0 }).F_b).toBe(duct(pipe).F_b);
  });
});

describe("notes", () => {
  const about = (given: DuctGiven) => {
    const trace = recording();
    duct(given, trace);
    return trace.notes.map((note) => note.about);
  };

  it("say where one density is no longer good enough", () => {
    expect(about(pipe)).toEqual([]);
    expect(about({ ...pipe, m_a: 0.9 })).toContain("Ma_end");
  });

  it("say where the air is given more vapour than it can hold", () => {
    expect(about({ ...pipe, p_in: 100e3, T_in: 290, m_a: 0.1, w: 0.02 })).toEqual(["w"]);
  });

  it("say where suction pulls bends and ends inward", () => {
    expect(about({ ...pipe, p_in: 90e3, T_in: 290, m_a: 0.1 })).toEqual(["F_b", "F_e"]);
  });

  it("say where the flow is neither laminar nor turbulent", () => {
    expect(about({ ...pipe, m_a: 0.0045 })).toContain("Re");
  });
});

it("is the same with and without trace", () => {
  fc.assert(
    fc.property(ducts, (change) => {
      const given = withFlow(change);
      expect(duct(given, recording())).toEqual(duct(given, plain));
    }),
  );
});

describe("it refuses, and names the field and the bound", () => {
  it.each([
    ["no flow", { m_a: 0 }, "m_a", 0],
    ["no bore", { d: 0 }, "d", 0],
    ["a length below nothing", { L: -1 }, "L", 0],
    ["a bore that a convoluted wall fills", { surface: "convoluted", d: 0.005 }, "d", 0.01],
    ["a roughness that fills the bore", { surface: "given", k_s: 0.01 }, "k_s", 0.076 / 20],
    ["a loss coefficient below nothing", { K_o: -1 }, "K_o", 0],
    ["no pressure", { p_in: 0 }, "p_in", 0],
    ["no barometer", { p_0: 0 }, "p_0", 0],
    ["air far too cold", { T_in: 100 }, "T_in", 173.15],
  ] as const)("%s", (_, change, field, bound) => {
    try {
      duct({ ...pipe, ...change });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe(field);
      expect(error.limit?.value).toBeCloseTo(bound, 12);
    }
  });
});
