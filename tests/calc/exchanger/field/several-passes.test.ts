import { describe, expect, it } from "vitest";
import { counterCross4 } from "../../../../calc/exchanger/effectiveness/counter-cross-4.ts";
import { fieldEffectiveness } from "../../../../calc/exchanger/field/field-effectiveness.ts";
import { layouts } from "../../../../calc/exchanger/layouts.ts";

// An independent program that solves both streams cell by cell, to eight digits.
const passes = [
  ["counter-cross-3", 2, 0.5, 0.76460623],
  ["counter-cross-3", 3, 1, 0.72248028],
  ["counter-cross-4", 2, 0.5, 0.76888706],
  ["counter-cross-4", 3, 1, 0.73363558],
  ["counter-cross-5", 2, 0.5, 0.77094759],
  ["counter-cross-5", 3, 1, 0.73927943],
] as const;

describe("three, four and five passes against the air", () => {
  it.each(passes)("%s at NTU %d and R %d", (id, NTU, R, P) => {
    expect(fieldEffectiveness(layouts[id], NTU, R)).toBeCloseTo(P, 8);
  });
});

// A collocation solution of the equations of all rows, by an independent program, to ten digits.
const sixes = [
  [6, 1, 0.533, 1.07, 0.3431677719],
  [6, 1, 2.97, 1.5, 0.6013363669],
  [6, 1, 2.12, 1.35, 0.5950542174],
  [1, 6, 0.34, 0.98, 0.2513804452],
  [1, 6, 1.54, 1.77, 0.4417190587],
  [1, 6, 3.28, 1.96, 0.4721878741],
] as const;

describe("six rows, in six passes or fed side by side", () => {
  it.each(sixes)("%d passes of %d rows at NTU %d and R %d", (passes, rows, NTU, R, P) => {
    const layout = { ...layouts["counter-cross-2"], passes, rows };
    expect(fieldEffectiveness(layout, NTU, R)).toBeCloseTo(P, 9);
  });
});

/**
 * The four-pass formula as one public library of programs has it, with R/8 where 2 R belongs and an exponential inside the
 * bracket. Written out here only to show that it cannot be right; the print behind it was not seen, so that the error may
 * be the library's or the print's.
 */
function transcribedFourPasses(NTU: number, R: number): number {
  const Gamma = 1 - Math.exp(-NTU / 4);
  const h = 1 - Gamma / 2;
  const e = Math.exp(2 * Gamma * R);
  const xi =
    (Gamma / 2) * (1 - Gamma / 2 + Gamma ** 2 / 4) +
    Gamma * h * (1 - (R / 8) * Gamma * h * e) +
    h ** 3 * Math.exp(4 * Gamma * R);
  return (1 - 1 / xi) / R;
}

describe("the four-pass formula that is in circulation", () => {
  const ours = (NTU: number, R: number) => counterCross4.compute({ NTU, R });
  const field = (NTU: number, R: number) => fieldEffectiveness(layouts["counter-cross-4"], NTU, R);

  it("misses the field by a hundredth and more, and ours meets it", () => {
    expect(transcribedFourPasses(2, 0.5)).toBeCloseTo(0.7585, 4);
    expect(field(2, 0.5)).toBeCloseTo(0.7689, 4);
    expect(ours(2, 0.5)).toBeCloseTo(field(2, 0.5), 12);
  });

  it("does not stand between three and five passes, as four passes must", () => {
    for (const [NTU, R] of [
      [2, 0.5],
      [3, 1],
      [4, 0.5],
    ] as const) {
      const three = fieldEffectiveness(layouts["counter-cross-3"], NTU, R);
      const five = fieldEffectiveness(layouts["counter-cross-5"], NTU, R);
      const wrong = transcribedFourPasses(NTU, R);
      expect(ours(NTU, R)).toBeGreaterThan(three);
      expect(ours(NTU, R)).toBeLessThan(five);
      expect(wrong < three || wrong > five).toBe(true);
    }
  });

  it("even changes sides: too low with plenty of water, too high with little", () => {
    expect(transcribedFourPasses(2, 0.5)).toBeLessThan(field(2, 0.5));
    expect(transcribedFourPasses(3, 1)).toBeGreaterThan(field(3, 1));
  });

  it("does not even keep to what plenty of water does: 1 - exp(-NTU) as R goes to 0", () => {
    const R = 1e-5;
    expect(field(2, R)).toBeCloseTo(1 - Math.exp(-2), 4);
    expect(ours(2, R)).toBeCloseTo(1 - Math.exp(-2), 4);
    expect(Math.abs(transcribedFourPasses(2, R) - (1 - Math.exp(-2)))).toBeGreaterThan(0.01);
  });
});
