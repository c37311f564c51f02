import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FLAT } from "../../../calc/charge/best-split.ts";
import { type TwoStageSplitGiven, twoStageSplit } from "../../../calc/charge/two-stage-split.ts";
import { MOST_OF_ONE } from "../../../calc/compression/accept-ratio.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 40) };

/* Quarry loader: an engine-driven compressor of poor efficiency before a turbocharger. */
const loader: TwoStageSplitGiven = {
  p_0: 100e3,
  T_0: 298.15,
  humidity: "dry",
  m_a: 0.62,
  p_m: 420e3,
  heatCapacity: "real",
  eta_s: 0.6,
  eta_s_2: 0.76,
  cooler: "effectiveness",
  P: 0.8,
  T_w_in: 303.15,
  Delta_p_23: 6e3,
  cooler_45: "effectiveness",
  P_45: 0.85,
  T_w_in_45: 303.15,
  Delta_p_45: 7e3,
  drive: "crankshaft",
  drive_2: "exhaust",
  eta_b: 0.95,
  least: "shaft",
  split: "best",
};

const workAt = (given: TwoStageSplitGiven, r_1: number) =>
  twoStageSplit({ ...given, split: "given", r_1 }).W_c12;

/** First ratios from end to end. */
function scan(given: TwoStageSplitGiven, points: number): readonly number[] {
  const { cooler, zeta = 0, loss, Delta_p_23 = 0, Delta_p_45 = 0 } = given;
  const p_4 = (given.p_m ?? 0) + (given.cooler_45 === "none" ? 0 : Delta_p_45);
  const before = (p_3: number) =>
    cooler === "none" ? p_3 : loss === "part" ? p_3 / (1 - zeta) : p_3 + Delta_p_23;
  const most = before(p_4) / given.p_0;
  // The second one's ratio is looked at up to that of one compressor.
  const least = Math.max(1, (before(p_4 / MOST_OF_ONE) / given.p_0) * (1 + 1e-12));
  return Array.from({ length: points }, (_, i) => least + ((most - least) * i) / (points - 1));
}

const anyPair = fc
  .record({
    T_0: fc.double({ min: 250, max: 320, noNaN: true }),
    total: fc.double({ min: 1.6, max: 9, noNaN: true }),
    eta_s: fc.double({ min: 0.4, max: 0.85, noNaN: true }),
    eta_s_2: fc.double({ min: 0.4, max: 0.85, noNaN: true }),
    cooler: fc.constantFrom("effectiveness", "none"),
    P: fc.double({ min: 0, max: 1, noNaN: true }),
    T_w_in: fc.double({ min: 275, max: 330, noNaN: true }),
    Delta_p_23: fc.double({ min: 0, max: 15e3, noNaN: true }),
    humidity: fc.constantFrom("dry", "relative"),
    varphi_0: fc.double({ min: 0.2, max: 1, noNaN: true }),
  })
  .map(({ total, ...some }) => ({ ...loader, ...some, p_m: total * loader.p_0 - 7e3 }) as TwoStageSplitGiven);

describe("the split of least work", () => {
  it("agrees with a scan of ten thousand splits", () => {
    const cases: readonly Partial<TwoStageSplitGiven>[] = [
      {},
      { eta_s: 0.76 },
      { P: 0.3, eta_s: 0.8 },
      { cooler: "none" },
      { humidity: "relative", varphi_0: 0.9, eta_s: 0.72 },
    ];
    for (const change of cases) {
      const given = { ...loader, ...change };
      const best = twoStageSplit(given);
      const ratios = scan(given, 10_000);
      const works = ratios.map((r_1) => workAt(given, r_1));
      const lowest = Math.min(...works);
      const at = (i: number) => ratios.at(i) ?? Number.NaN;
      const step = (at(-1) - at(0)) / 9999;
      expect(best.W_c12).toBeLessThanOrEqual(lowest);
      expect(best.W_c12 / lowest).toBeGreaterThan(1 - 1e-7);
      expect(Math.abs(best.r_1 - at(works.indexOf(lowest)))).toBeLessThan(2 * step);
    }
  });

  it("is never beaten by another split", () => {
    fc.assert(
      fc.property(anyPair, fc.array(fc.nat(500), { maxLength: 20 }), (given, places) => {
        const best = twoStageSplit(given);
        const ratios = scan(given, 501);
        for (const place of places)
          expect(workAt(given, ratios[place] ?? Number.NaN)).toBeGreaterThanOrEqual(best.W_c12 * (1 - 1e-9));
      }),
      runs,
    );
  });

  it("of equal compressors and perfect cooling without loss divides the pressure equally", () => {
    const best = twoStageSplit({
      ...loader,
      heatCapacity: "constant",
      kappa: 1.4,
      eta_s: 0.7,
      eta_s_2: 0.7,
      P: 1,
      T_w_in: loader.T_0,
      Delta_p_23: 0,
    });
    expect(best.r_1).toBeCloseTo(Math.sqrt(4.27), 6);
    expect(best.r_1_rule).toBeCloseTo(Math.sqrt(4.27), 12);
    expect(best.r_1).toBeCloseTo(best.r_2, 5);
  });

  it("follows the closed form for unequal compressors behind perfect cooling", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.6, max: 0.8, noNaN: true }),
        fc.double({ min: 0.6, max: 0.8, noNaN: true }),
        (eta_s, eta_s_2) => {
          const { r_1, r_1_rule } = twoStageSplit({
            ...loader,
            heatCapacity: "constant",
            kappa: 1.4,
            eta_s,
            eta_s_2,
            P: 1,
            Delta_p_23: 0,
          });
          if (r_1_rule !== undefined) expect(r_1 / r_1_rule).toBeCloseTo(1, 6);
        },
      ),
      runs,
    );
  });

  it("can need more work than one compressor, and less where both are good", () => {
    const poor = twoStageSplit(loader);
    expect(poor.W_c12).toBeGreaterThan(poor.W_single * 1.04);
    const good = twoStageSplit({ ...loader, eta_s: 0.76 });
    expect(good.W_c12).toBeLessThan(good.W_single * 0.96);
  });

  it("is flat: within the band the work grows by a hundredth, and by more outside", () => {
    const { W_best, r_1_flat_from, r_1_flat_to } = twoStageSplit(loader);
    const most = (1 + FLAT) * W_best;
    expect(workAt(loader, r_1_flat_from)).toBeCloseTo(most, 1);
    expect(workAt(loader, r_1_flat_to)).toBeCloseTo(most, 1);
    expect(workAt(loader, r_1_flat_to + 0.02)).toBeGreaterThan(most);
  });

  it("weighs exhaust power by what it costs", () => {
    const dear = twoStageSplit({ ...loader, eta_s: 0.76, least: "crankshaft", chi_g: 1 / 0.95 });
    const plainly = twoStageSplit({ ...loader, eta_s: 0.76 });
    expect(dear.r_1).toBeCloseTo(plainly.r_1, 5);
    const cheap = twoStageSplit({ ...loader, eta_s: 0.76, least: "crankshaft", chi_g: 0.8 });
    expect(cheap.r_1).toBeLessThan(plainly.r_1);
  });
});

describe("comparisons", () => {
  it("at its break-even loss the cooler between saves nothing", () => {
    fc.assert(
      fc.property(anyPair, (given) => {
        const { r_1, Delta_p_even, W_no_cooler } = twoStageSplit(given);
        if (Delta_p_even === undefined || W_no_cooler === undefined) return;
        const at = (Delta_p_23: number) => workAt({ ...given, Delta_p_23 }, r_1);
        expect(at(Delta_p_even) / W_no_cooler).toBeCloseTo(1, 9);
        expect(at(Delta_p_even * 0.9)).toBeLessThan(W_no_cooler);
      }),
      runs,
    );
  });

  it("losses are multiplied: the second compressor makes up for the first cooler", () => {
    const given = { ...loader, split: "given", r_1: 2 } as const;
    const { r_2, p_3 } = twoStageSplit(given);
    expect(r_2 * p_3).toBeCloseTo(427e3, 6);
    expect(twoStageSplit({ ...given, Delta_p_23: 12e3 }).r_2).toBeGreaterThan(r_2);
  });
});

describe("limits of the hardware", () => {
  it("hold the split, which says so", () => {
    const trace = recording();
    const held = twoStageSplit({ ...loader, T_4_most: 463.15 }, trace);
    expect(held.T_4).toBeCloseTo(463.15, 6);
    expect(held.T_4).toBeLessThanOrEqual(463.15);
    expect(held.r_1).toBeCloseTo(held.r_1_from ?? 0, 6);
    expect(trace.notes.map(({ says }) => says).join()).toContain(
      "Less work would be possible beyond a limit",
    );
  });

  it("every split that is found keeps to them", () => {
    fc.assert(
      fc.property(
        anyPair,
        fc.double({ min: 340, max: 520, noNaN: true }),
        fc.double({ min: 340, max: 520, noNaN: true }),
        fc.double({ min: 1.2, max: 4, noNaN: true }),
        (given, T_2_most, T_4_most, r_1_most) => {
          try {
            const { T_2, T_4, r_1 } = twoStageSplit({ ...given, T_2_most, T_4_most, r_1_most });
            expect(T_2).toBeLessThanOrEqual(T_2_most);
            expect(T_4).toBeLessThanOrEqual(T_4_most);
            expect(r_1).toBeLessThanOrEqual(r_1_most);
          } catch (error) {
            expect(error).toBeInstanceOf(DomainError);
            const { field, limit, message } = error as DomainError;
            expect(["T_2_most", "T_4_most", "r_1_most"]).toContain(field);
            const raised = { T_2_most, T_4_most, r_1_most, [field]: (limit?.value ?? 0) * 1.02 };
            // Raised, a limit that no split keeps to may still exclude another one.
            if (message.startsWith("Together"))
              expect(() => twoStageSplit({ ...given, ...raised })).not.toThrow();
          }
        },
      ),
      runs,
    );
  });

  it("are kept by a part of the range that is narrower than any scan", () => {
    const { T_4, r_1 } = twoStageSplit({ ...loader, T_4_most: 463.15 });
    for (const margin of [1e-3, 1e-5, 1e-7]) {
      const narrow = twoStageSplit({ ...loader, T_4_most: T_4, r_1_most: r_1 * (1 + margin) });
      expect(narrow.r_1).toBeCloseTo(r_1, 6);
    }
  });

  it("the lowest that is named can be had", () => {
    const limits = { T_2_most: 450, T_3_most: 340, T_4_most: 465, W_b_most: 1000 };
    try {
      twoStageSplit({ ...loader, ...limits });
      expect.unreachable();
    } catch (error) {
      const { field, limit } = error as DomainError;
      expect(field).toBe("W_b_most");
      const W_b_most = (limit?.value ?? 0) * (1 + 1e-6);
      expect(twoStageSplit({ ...loader, ...limits, W_b_most }).W_b).toBeLessThanOrEqual(W_b_most);
    }
  });

  it("a given split is computed even where no split keeps to them", () => {
    const given = { ...loader, split: "given", r_1: 1.2 } as const;
    const { r_1_from, ...rest } = twoStageSplit({ ...given, T_4_most: 373.15, r_1_most: 2 });
    expect(rest.W_c12).toBe(twoStageSplit(given).W_c12);
    expect(r_1_from).toBeUndefined();
  });

  it("a given split that passes one keeps its numbers and gets a note", () => {
    const trace = recording();
    const given = { ...loader, split: "given", r_1: 1.2, T_4_most: 463.15 } as const;
    expect(twoStageSplit(given, trace)).toEqual(twoStageSplit(given, plain));
    expect(trace.notes.map(({ about }) => about)).toContain("T_4_most");
  });
});

describe("what cannot be", () => {
  const cases: readonly (readonly [string, Partial<TwoStageSplitGiven>, string])[] = [
    ["a pressure below the inlet's", { p_m: 90e3 }, "p_m"],
    ["a second stage that expands", { split: "given", r_1: 4.4 }, "r_1"],
    ["a first stage that expands", { split: "given", r_1: 0.9 }, "r_1"],
    ["a loss that leaves nothing", { split: "given", r_1: 1.2, Delta_p_23: 110e3 }, "r_1"],
    ["a temperature no split keeps to", { T_3_most: 300 }, "T_3_most"],
    ["two limits that exclude each other", { r_1_most: 1.5, r_2_most: 2 }, "r_2_most"],
    ["no drive efficiency", { eta_b: undefined }, "eta_b"],
    ["effectiveness above one", { P: 1.2 }, "P"],
    ["no loss as part", { loss: "part" }, "zeta"],
    ["all pressure lost", { loss: "part", zeta: 1 }, "zeta"],
  ];
  it.each(cases)("%s", (_, change, field) => {
    try {
      twoStageSplit({ ...loader, ...change });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
    }
  });

  it("the bound of a split that expands can be had", () => {
    try {
      twoStageSplit({ ...loader, split: "given", r_1: 4.4 });
      expect.unreachable();
    } catch (error) {
      const r_1 = (error as DomainError).limit?.value ?? 0;
      expect(twoStageSplit({ ...loader, split: "given", r_1 }).r_2).toBe(1);
    }
  });
});
