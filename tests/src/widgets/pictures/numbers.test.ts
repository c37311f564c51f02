import fc from "fast-check";
import { expect, test } from "vitest";
import { niceMarks, niceStep, spanOf } from "../../../../src/widgets/pictures/numbers.ts";
import { airColour } from "../../../../src/widgets/pictures/ribbon.ts";

const anySpan = fc
  .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 1e-3, max: 1e6, noNaN: true }))
  .map(([from, size]): [number, number] => [from, from + size]);

test("a step is 1, 2 or 5 times a power of ten, near the one asked for", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
      fc.integer({ min: 2, max: 12 }),
      (span, about) => {
        const step = niceStep(span, about);
        const lead = Number(step.toExponential(9).split("e")[0]);
        expect([1, 2, 5]).toContain(lead);
        expect(span / step / about).toBeGreaterThan(0.6);
        expect(span / step / about).toBeLessThan(1.7);
      },
    ),
  );
});

test("marks are multiples of one step, all of those in the span, and read as what they are", () => {
  fc.assert(
    fc.property(anySpan, ([from, to]) => {
      const marks = niceMarks(from, to, 5);
      const step = niceStep(to - from, 5);
      expect(marks.length).toBeGreaterThanOrEqual(2);
      expect(marks.length).toBeLessThanOrEqual(10);
      for (const { value, text } of marks) {
        expect(Math.abs(value / step - Math.round(value / step))).toBeLessThan(1e-6);
        expect(Math.abs(Number(text.replace("−", "-").replaceAll("\u202f", "")) - value)).toBeLessThan(
          1e-6 * step,
        );
      }
    }),
  );
});

test("marks are printed alike", () => {
  const print = (from: number, to: number) => niceMarks(from, to, 5).map(({ text }) => text);
  expect(print(-100, 100)).toEqual(["−100", "−50", "0", "50", "100"]);
  expect(print(0.5, 3.5)).toEqual(["0.5", "1.0", "1.5", "2.0", "2.5", "3.0", "3.5"]);
  expect(print(0, 12_000)).toEqual([
    "0",
    "2\u202f000",
    "4\u202f000",
    "6\u202f000",
    "8\u202f000",
    "10\u202f000",
    "12\u202f000",
  ]);
  expect(print(0.001, 0.0021)).toEqual(["0.0010", "0.0012", "0.0014", "0.0016", "0.0018", "0.0020"]);
});

test("there are no marks where there is no span", () => {
  for (const [from, to] of [
    [1, 1],
    [2, 1],
    [Number.NaN, 1],
    [0, Number.POSITIVE_INFINITY],
  ] as const) {
    expect(niceMarks(from, to, 5)).toEqual([]);
  }
});

test("equal values are moved apart, and nothing gives a span", () => {
  expect(spanOf([20, 20])).toEqual([18, 22]);
  expect(spanOf([0])).toEqual([0, 1]);
  expect(spanOf([])).toEqual([0, 1]);
  expect(spanOf([-3, 5])).toEqual([-3, 5]);
});

test("air has the colour of its token at the token's temperature, and no colour beyond the last", () => {
  expect(airColour(273.15 + 25)).toContain("var(--air-1) 100%");
  expect(airColour(273.15 + 110)).toBe("color-mix(in srgb,var(--air-3),var(--air-4) 50%)");
  expect(airColour(273.15 - 40)).toBe("color-mix(in srgb,var(--air-0),var(--air-1) 0%)");
  expect(airColour(273.15 + 300)).toBe("color-mix(in srgb,var(--air-5),var(--air-6) 100%)");
});
