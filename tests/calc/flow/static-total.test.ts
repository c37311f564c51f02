import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { type StaticTotalGiven, staticTotal } from "../../../calc/flow/static-total.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

fc.configureGlobal({ numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) });

/** An inlet duct high up. */
const inlet: StaticTotalGiven = {
  m_a: 0.2271,
  section: "bore",
  d: 0.1,
  pressure: "total",
  p: 80_987,
  temperature: "total",
  T: 305.15,
  r_rec: 0.7,
  w: 0.0208485,
};

const pressures = ["static", "total"] as const;
const temperatures = ["static", "total", "probe"] as const;
const streams = fc.record({
  share: fc.double({ min: 1e-4, max: 0.85, noNaN: true }),
  p: fc.double({ min: 2e4, max: 1e6, noNaN: true }),
  T: fc.double({ min: 220, max: 700, noNaN: true }),
  w: fc.double({ min: 0, max: 0.1, noNaN: true }),
  r_rec: fc.double({ min: 0.2, max: 1, noNaN: true }),
  d: fc.double({ min: 0.01, max: 1, noNaN: true }),
});

describe("static and total", () => {
  test("come back from each other, whichever two are known", () => {
    fc.assert(
      fc.property(streams, ({ share, ...given }) => {
        const base = { ...inlet, ...given };
        const m_a = share * staticTotal({ ...base, m_a: 1e-9 }).m_star;
        const out = staticTotal({ ...base, m_a });
        for (const pressure of pressures)
          for (const temperature of temperatures) {
            const p = pressure === "static" ? out.p_stat : out.p_tot;
            const T = { static: out.T_stat, total: out.T_tot, probe: out.T_rec }[temperature];
            const back = staticTotal({ ...base, m_a, pressure, p, temperature, T });
            expect(back.p_stat / out.p_stat).toBeCloseTo(1, 8);
            expect(back.p_tot / out.p_tot).toBeCloseTo(1, 8);
            expect(back.T_stat).toBeCloseTo(out.T_stat, 6);
            expect(back.T_tot).toBeCloseTo(out.T_tot, 6);
            expect(back.Ma).toBeCloseTo(out.Ma, 7);
          }
      }),
    );
  });

  test("part with the square of the flow while it is slow", () => {
    const of = (m_a: number) => staticTotal({ ...inlet, m_a });
    const [slow, twice] = [of(0.02), of(0.04)];
    expect(twice.p_imp / slow.p_imp).toBeCloseTo(4, 2);
    expect(slow.p_imp / ((slow.rho * slow.c ** 2) / 2)).toBeCloseTo(1, 4);
  });

  test("keep mass and energy: density, area and speed make the flow, and the square of the speed the rise", () => {
    fc.assert(
      fc.property(streams, ({ share, ...given }) => {
        const base = { ...inlet, ...given, w: 0 };
        const m_a = share * staticTotal({ ...base, m_a: 1e-9 }).m_star;
        const out = staticTotal({ ...base, m_a });
        expect((out.rho * out.c * Math.PI * given.d ** 2) / 4 / m_a).toBeCloseTo(1, 10);
        // The heat capacity of air lies between these from 180 to 800 K.
        const rise = out.T_tot - out.T_stat;
        expect(out.c ** 2 / 2).toBeGreaterThanOrEqual(1000 * rise - 1e-6);
        expect(out.c ** 2 / 2).toBeLessThanOrEqual(1110 * rise + 1e-6);
      }),
    );
  });

  test("a probe reads between them", () => {
    fc.assert(
      fc.property(streams, ({ share, ...given }) => {
        const base = { ...inlet, ...given };
        const out = staticTotal({ ...base, m_a: share * staticTotal({ ...base, m_a: 1e-9 }).m_star });
        expect(out.T_rec).toBeGreaterThanOrEqual(out.T_stat - 1e-9);
        expect(out.T_rec).toBeLessThanOrEqual(out.T_tot + 1e-9);
        expect(out.Delta_T_rec).toBeCloseTo((given.r_rec - 1) * (out.T_tot - out.T_stat), 9);
      }),
    );
  });
});

describe("the largest flow is the true bound", () => {
  const ways = pressures.flatMap((pressure) =>
    temperatures.map((temperature) => ({ pressure, temperature })),
  );
  it.each(ways)("%o", (way) => {
    const { m_star } = staticTotal({ ...inlet, ...way });
    const most = staticTotal({ ...inlet, ...way, m_a: m_star });
    expect(most.Ma).toBeLessThanOrEqual(1 + 1e-6);
    // With the total pressure and another temperature than the total one the flow peaks a little before the speed of sound.
    expect(most.Ma).toBeGreaterThan(way.pressure === "static" || way.temperature === "total" ? 0.99999 : 0.9);
    try {
      staticTotal({ ...inlet, ...way, m_a: m_star * (1 + 1e-12) });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe("m_a");
      expect(error.limit).toEqual({ value: m_star, kind: "massFlow" });
    }
  });

  it("is the flow of a nozzle at its throat: dry air of 100 kPa and 300 K, 233.3 kg/(m² s) (textbooks, κ of 1.4)", () => {
    const { m_star } = staticTotal({
      ...inlet,
      section: "area",
      A: 1,
      p: 1e5,
      T: 300,
      w: 0,
    });
    // 0.68473 p/sqrt(R T), from memory.
    expect(m_star / ((0.68473 * 1e5) / Math.sqrt(287.043 * 300))).toBeCloseTo(1, 3);
  });
});

it("is the same with and without trace, and the same by area", () => {
  expect(staticTotal(inlet, recording())).toEqual(staticTotal(inlet, plain));
  const { d: _, ...rest } = inlet;
  const byArea = staticTotal({ ...rest, section: "area", A: (Math.PI * 0.1 ** 2) / 4 });
  expect(byArea.c).toBeCloseTo(staticTotal(inlet).c, 10);
});

it("says where the air is given more vapour than it can hold", () => {
  const notesOf = (w: number) => {
    const trace = recording();
    staticTotal({ ...inlet, w }, trace);
    return trace.notes;
  };
  // At 32 °C and 81 kPa air holds 0.039 kg/kg (psychrometric charts, corrected to the pressure).
  expect(notesOf(0.03)).toEqual([]);
  const [note] = notesOf(0.06);
  expect(note?.about).toBe("w");
  expect(note?.limit?.value).toBeCloseTo(0.038, 2);
});

describe("it refuses, and names the field", () => {
  it.each([
    ["no flow", { m_a: 0 }, "m_a", 0],
    ["no bore", { d: 0 }, "d", 0],
    ["no area", { section: "area", A: 0 }, "A", 0],
    ["no pressure", { p: 0 }, "p", 0],
    ["a temperature far too low", { T: 100 }, "T", 173.15],
    ["a probe that feels nothing", { r_rec: 0 }, "r_rec", 0.2],
    ["a probe that feels more than all", { r_rec: 1.1 }, "r_rec", 1],
    ["less than no vapour", { w: -0.01 }, "w", 0],
  ] as const)("%s", (_, change, field, bound) => {
    try {
      staticTotal({ ...inlet, ...change });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      expect(error.field).toBe(field);
      expect(error.limit?.value).toBe(bound);
    }
  });
});
