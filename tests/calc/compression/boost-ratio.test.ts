import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoostRatioGiven, boostRatio } from "../../../calc/compression/boost-ratio.ts";
import { recording } from "../../../calc/relation/trace.ts";

const at98: BoostRatioGiven = { find: "ratio", at: "outlet", p_0: 98e3, Delta_p_01: 0, p_g: 98e3 };

describe("boost and ratio", () => {
  test("boost as large as the barometer is a ratio of 2, without losses", () => {
    expect(boostRatio(at98).r).toBe(2);
    expect(boostRatio({ ...at98, p_g: 0 }).r).toBe(1);
  });

  test("each loss makes the compressor work more for the same gauge", () => {
    const inlet = boostRatio({ ...at98, Delta_p_01: 4e3 }).r;
    const both = boostRatio({ ...at98, at: "cooler", Delta_p_01: 4e3, Delta_p_23: 12e3 }).r;
    expect(inlet).toBeCloseTo(196 / 94, 12);
    expect(both).toBeCloseTo(208 / 94, 12);
  });

  test("there and back is where it was", () => {
    const state = fc.record({
      at: fc.constantFrom("outlet" as const, "cooler" as const),
      p_0: fc.double({ min: 5e4, max: 1.1e5, noNaN: true }),
      Delta_p_01: fc.double({ min: 0, max: 2e4, noNaN: true }),
      Delta_p_23: fc.double({ min: 0, max: 2e4, noNaN: true }),
      r: fc.double({ min: 1, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(state, ({ r, ...rest }) => {
        const there = boostRatio({ ...rest, find: "boost", r });
        const back = boostRatio({ ...rest, find: "ratio", p_g: there.p_g });
        expect(back.r).toBeCloseTo(r, 9);
        expect(back.p_2).toBeCloseTo(there.p_2, 4);
      }),
    );
  });

  test.each([
    ["a boost below the inlet", { p_g: -1e3 }, "p_g"],
    ["a vacuum past all pressure", { p_g: -98e3 }, "p_g"],
    ["a loss that leaves no pressure", { Delta_p_01: 98e3 }, "Delta_p_01"],
    ["no cooler loss after a cooler", { at: "cooler" as const }, "Delta_p_23"],
    ["a ratio below 1", { find: "boost" as const, r: 0.9 }, "r"],
    [
      "a cooler that takes all the pressure",
      { find: "boost" as const, at: "cooler" as const, r: 2, Delta_p_23: 196e3 },
      "Delta_p_23",
    ],
  ])("refuses %s", (_, change, field) => {
    expect(() => boostRatio({ ...at98, ...change })).toThrow(expect.objectContaining({ field }));
  });

  test("says where one compressor hardly goes", () => {
    const trace = recording();
    expect(boostRatio({ ...at98, p_g: 1e6 }, trace).r).toBeGreaterThan(10);
    expect(trace.notes.map(({ about }) => about)).toEqual(["r"]);
    const usual = recording();
    boostRatio(at98, usual);
    expect(usual.notes).toEqual([]);
  });
});
