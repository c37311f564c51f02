import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CompressorOutletGiven, compressorOutlet } from "../../../calc/compression/compressor-outlet.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

/* Irrigation pump engine, worked by an independent program: 25 °C, 99.0 kPa, dry, ratio 2.2, isentropic 0.74. */
const pump: CompressorOutletGiven = {
  p_in: 99e3,
  T_in: 298.15,
  w: 0,
  boost: "ratio",
  r: 2.2,
  efficiency: "isentropic",
  eta_s: 0.74,
  eta_p: 0.8,
  heatCapacity: "real",
  kappa: 1.4,
};

describe("compressor outlet of the pump engine", () => {
  const out = compressorOutlet({ ...pump, m_a: 0.15405 });

  it("meets the worked numbers to their last digit", () => {
    expect(out.T_s - 273.15).toBeCloseTo(100.102, 3);
    expect(out.T_out - 273.15).toBeCloseTo(126.36, 2);
    expect(out.T_out_other - 273.15).toBeCloseTo(126.8, 2);
    expect(out.Delta_h / 1e3).toBeCloseTo(102.253, 3);
    expect(out.eta_p).toBeCloseTo(0.7668, 4);
    expect(out.rho_in).toBeCloseTo(1.1568, 4);
    expect(out.rho_out).toBeCloseTo(1.8993, 4);
    expect(out.D_rho).toBeCloseTo(1.6418, 4);
    expect((out.W_c ?? 0) / 1e3).toBeCloseTo(15.75, 2);
  });

  it("is the same by ratio and by outlet pressure", () => {
    const by = compressorOutlet({ ...pump, boost: "pressure", p_out: 217.8e3, m_a: 0.15405 });
    expect(by.T_out).toBeCloseTo(out.T_out, 9);
    expect(by.r).toBeCloseTo(2.2, 12);
  });

  it("the polytropic efficiency that results gives the same outlet", () => {
    const by = compressorOutlet({ ...pump, efficiency: "polytropic", eta_p: out.eta_p });
    expect(by.T_out).toBeCloseTo(out.T_out, 7);
    expect(by.eta_s).toBeCloseTo(0.74, 9);
    const constant = compressorOutlet({ ...pump, heatCapacity: "constant" });
    const back = compressorOutlet({
      ...pump,
      heatCapacity: "constant",
      efficiency: "polytropic",
      eta_p: constant.eta_p,
    });
    expect(back.T_out).toBeCloseTo(constant.T_out, 9);
    expect(back.eta_s).toBeCloseTo(0.74, 9);
    expect(constant.T_out).toBe(out.T_out_other);
    expect(constant.T_out_other).toBe(out.T_out);
  });
});

describe("against textbooks", () => {
  const dry = { ...pump, p_in: 100e3, T_in: 300 };

  it("ideal compression 300 K, ratio 8: 540 K (Cengel and Boles, simple Brayton cycle, from memory)", () => {
    expect(Math.abs(compressorOutlet({ ...dry, r: 8, eta_s: 1 }).T_out - 540)).toBeLessThan(1);
    expect(compressorOutlet({ ...dry, r: 8, eta_s: 1 }).T_out).toBeCloseTo(539.61, 1);
  });

  it("300 K, ratio 8, efficiency 0.80: 598 K, 305.0 kJ/kg (Cengel and Boles, example 9-6, from memory)", () => {
    const out = compressorOutlet({ ...dry, r: 8, eta_s: 0.8 });
    expect(Math.abs(out.T_out - 598.06)).toBeLessThan(0.1);
    expect(Math.abs(out.Delta_h / 1e3 - 305)).toBeLessThan(0.1);
  });

  it("isentropic work 300 K, 100 to 900 kPa, constant heat capacity: 263.2 kJ/kg (Cengel and Boles, from memory)", () => {
    const out = compressorOutlet({ ...dry, r: 9, eta_s: 1, heatCapacity: "constant", kappa: 1.4 });
    expect(Math.abs(out.Delta_h / 1e3 - 263.2)).toBeLessThan(0.1);
  });
});

describe("limits and directions", () => {
  const kinds = (["real", "constant"] as const).flatMap((heatCapacity) =>
    (["isentropic", "polytropic"] as const).map((efficiency) => ({ heatCapacity, efficiency })),
  );
  it.each(kinds)("a ratio of 1 changes nothing, to the last bit: %o", (kind) => {
    const equalPressures = { boost: "pressure", p_out: pump.p_in } as const;
    const roundedPressures = { boost: "pressure", p_out: pump.p_in * (1 + Number.EPSILON) } as const;
    for (const boost of [{ r: 1 }, equalPressures, roundedPressures]) {
      for (const T_in of [273.15, 298.15, 311.7]) {
        const trace = recording();
        const out = compressorOutlet({ ...pump, ...kind, ...boost, T_in, w: 0.0123, m_a: 0.15 }, trace);
        expect([out.T_s, out.T_out, out.T_out_other]).toEqual([T_in, T_in, T_in]);
        expect([out.Delta_h, out.W_c]).toEqual([0, 0]);
        expect(trace.notes.map(({ about }) => about)).toEqual(["compressor"]);
      }
    }
  });

  it.each(kinds)("at a ratio of 1 only the efficiency that was given is known: %o", (kind) => {
    const { eta_s, eta_p } = compressorOutlet({ ...pump, ...kind, r: 1 });
    expect([eta_s, eta_p]).toEqual(kind.efficiency === "isentropic" ? [0.74, undefined] : [undefined, 0.8]);
  });

  it.each(kinds)("next to a ratio of 1 the rise is that of the textbook: %o", (kind) => {
    const { T_in } = pump;
    const { T_out } = compressorOutlet({ ...pump, ...kind, r: 1 + 1e-7 });
    const efficiency = kind.efficiency === "isentropic" ? 0.74 : 0.8;
    // T_in (kappa - 1)/kappa (r - 1)/eta, the first term of the power; 0.4/1.4 is that of air within half a per cent.
    const rise = ((T_in * (0.4 / 1.4)) / efficiency) * 1e-7;
    expect(Math.abs((T_out - T_in) / rise - 1)).toBeLessThan(5e-3);
  });

  it("polytropic is above isentropic efficiency for compression", () => {
    expect(compressorOutlet({ ...pump, r: 4 }).eta_p).toBeGreaterThan(0.74);
  });

  it("notes the real gas above 0.6 MPa, with its deviation", () => {
    const trace = recording();
    compressorOutlet({ ...pump, p_in: 500e3, r: 3 }, trace);
    const notes = trace.notes.filter((note) => note.about === "rho_out");
    expect(notes).toHaveLength(1);
    expect(notes[0]?.says).toMatch(/real density here is about 0\.\d % lower/);
  });

  it("never gives a number that is not one, rises with ratio, and is the same with and without trace", () => {
    fc.assert(
      fc.property(
        fc.record({
          p_in: fc.double({ min: 1e3, max: 5e6, noNaN: true }),
          T_in: fc.double({ min: 173.15, max: 1000, noNaN: true }),
          w: fc.double({ min: 0, max: 1, noNaN: true }),
          boost: fc.constantFrom("ratio", "pressure"),
          r: fc.double({ min: 1, max: 50, noNaN: true }),
          p_out: fc.double({ min: 5e6, max: 5.01e6, noNaN: true }),
          efficiency: fc.constantFrom("isentropic", "polytropic"),
          eta_s: fc.double({ min: 0.1, max: 1, noNaN: true }),
          eta_p: fc.double({ min: 0.25, max: 1, noNaN: true }),
          heatCapacity: fc.constantFrom("real", "constant"),
          kappa: fc.double({ min: 1.05, max: 1.67, noNaN: true }),
          m_a: fc.double({ min: 0, max: 100, noNaN: true }),
        }),
        (given) => {
          if (given.boost === "pressure" && given.p_out > 50 * given.p_in) return;
          const out = compressorOutlet(given, plain);
          for (const value of Object.values(out))
            if (value !== undefined) expect(value).toSatisfy(Number.isFinite);
          expect(out.T_out).toBeGreaterThanOrEqual(out.T_s - 1e-6);
          expect(compressorOutlet(given, recording())).toEqual(out);
          const more = compressorOutlet({
            ...given,
            boost: "ratio",
            r: Math.min(out.r * 1.01, 50),
          });
          if (out.r <= 49) expect(more.T_out).toBeGreaterThan(out.T_out);
        },
      ),
    );
  });
});

describe("what cannot be", () => {
  it.each([
    ["eta_s", { eta_s: 1.01 }, 1],
    ["eta_s", { eta_s: 0 }, 0.1],
    ["eta_s", { eta_s: -3 }, 0.1],
    ["eta_p", { efficiency: "polytropic", eta_p: 2 }, 1],
    ["eta_p", { efficiency: "polytropic", eta_p: 0 }, 0.25],
    ["kappa", { heatCapacity: "constant", kappa: 1 }, 1.05],
    ["r", { r: 0.9 }, 1],
    ["p_out", { boost: "pressure", p_out: 90e3 }, 99e3],
    ["p_in", { p_in: 0 }, 0],
    ["T_in", { T_in: 20 }, 173.15],
    ["w", { w: -1 }, 0],
    ["m_a", { m_a: -1 }, 0],
  ] as const)("%s in %o", (field, change, bound) => {
    try {
      compressorOutlet({ ...pump, ...change });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      const refused = error as DomainError;
      expect(refused.field).toBe(field);
      expect(refused.limit?.value).toBe(bound);
    }
  });

  it("a missing number", () => {
    expect(() => compressorOutlet({ ...pump, r: undefined })).toThrow(/missing/);
    expect(() => compressorOutlet({ ...pump, r: Number.NaN })).toThrow(/missing/);
  });
});
