import fc from "fast-check";
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { writeNumber } from "../../../../calc/quantity/write.ts";
import { Shares } from "../../../../src/widgets/pictures/Shares.tsx";
import { layoutShares, narrowSize, wideSize } from "../../../../src/widgets/pictures/shares-layout.ts";
import { describeShares } from "../../../../src/widgets/pictures/shares-sentence.ts";
import type { Share, SharesProps } from "../../../../src/widgets/pictures/types.ts";
import { broken, collisions, drawings, reach, texts } from "./svg.ts";

const share = (label: string, value: number): Share => ({
  label,
  value,
  number: Number.isFinite(value) ? writeNumber(value) : "",
});
const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
const props = (values: readonly number[], sum = sumOf(values.filter(Number.isFinite))): SharesProps => ({
  title: "Where the pressure goes",
  unit: "kPa",
  rows: values.map((value, i) => share(`part ${i + 1}`, value)),
  sum: share("in all", sum),
});

const signed = props([42, -11, -35, 8]);
const hardCases = {
  "parts that are all zero": props([0, 0, 0]),
  "one that dominates": props([1, 1e6, 2]),
  "a sum far smaller than its parts": props([1e5, -99_700, 0.05]),
  "a sum of zero": props([5, -5]),
  "a negative sum": props([-30, 10]),
  "parts that are all negative": props([-1, -2]),
  "a missing part": props([1, Number.NaN, 2]),
  "a missing sum": props([1, 2], Number.NaN),
  "one part": props([5]),
  "twelve parts": props([1, 2, 3, 4, 5, -6, 7, 8, 9, 10, 11, 12]),
};

const anyShares = fc
  .array(
    fc.tuple(
      fc.oneof(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.constant(0),
        fc.double({ min: -1e13, max: 1e13 }),
      ),
      fc.integer({ min: 1, max: 9 }),
    ),
    { minLength: 1, maxLength: 12 },
  )
  .map((rows): SharesProps => {
    const known = rows.map(([value]) => value).filter(Number.isFinite);
    return {
      ...props(
        rows.map(([value]) => value),
        sumOf(known),
      ),
      rows: rows.map(([value, words], i) =>
        share(`${Array.from({ length: words }, () => "a long word").join(" ")} ${i}`, value),
      ),
    };
  });

describe.each([wideSize, narrowSize])("bars", (size) => {
  const expectSound = (given: SharesProps) => {
    const { bars, joins } = layoutShares(given, size);
    const parts = bars.filter(({ isSum }) => !isSum);
    const known = given.rows.filter(({ value }) => Number.isFinite(value));
    expect(parts.map(({ label }) => label)).toEqual(known.map(({ label }) => label));
    // Each begins where the one before ended, the first and the sum at zero.
    parts.forEach(({ ends }, i) => {
      expect(ends[0]).toBe(parts[i - 1]?.ends[1] ?? layoutShares(given, size).zero);
    });
    const sum = bars.find(({ isSum }) => isSum);
    if (sum && parts.length > 0) {
      expect(bars.at(-1)).toBe(sum);
      expect(sum.ends[0]).toBe(layoutShares(given, size).zero);
      expect(sum.ends[1]).toBeCloseTo(parts.at(-1)?.ends[1] ?? Number.NaN, 1);
      expect(joins).toHaveLength(bars.length - 1);
    }
    // What adds runs right, what takes away left, each as far as its value.
    const values = [...known, given.sum].slice(0, bars.length).map(({ value }) => value);
    const longest = Math.max(...values.map(Math.abs));
    const pixels = Math.max(...bars.map(({ box }) => box.w));
    bars.forEach(({ ends }, i) => {
      const share = longest > 0 ? (values[i] ?? Number.NaN) / longest : 0;
      expect(ends[1] - ends[0]).toBeCloseTo(pixels * share, 3);
    });
    // One under the other.
    bars.slice(1).forEach(({ box }, i) => {
      const before = bars[i]?.box;
      expect(box.y).toBeGreaterThan((before?.y ?? 0) + (before?.h ?? 0));
    });
  };
  test.each(Object.entries(hardCases))("of %s", (_, given) => expectSound(given));
  test("of whatever is added", () => {
    fc.assert(fc.property(anyShares, expectSound));
  });
  test("have their rule over the sum", () => {
    const { bars } = layoutShares(signed, size);
    expect(bars.map(({ rule }) => rule === undefined)).toEqual([true, true, true, true, false]);
    expect(bars.at(-1)?.rule).toBeGreaterThan((bars.at(-2)?.box.y ?? 0) + (bars.at(-2)?.box.h ?? 0));
    expect(bars.at(-1)?.rule).toBeLessThan(bars.at(-1)?.names[0]?.y ?? 0);
  });
  test("are not joined to a sum that is not theirs", () => {
    expect(layoutShares(props([1, 2], 5), size).joins).toHaveLength(1);
    expect(layoutShares(props([1, 2], 3 + 1e-9), size).joins).toHaveLength(2);
  });
});

describe("the drawing", () => {
  const expectClear = (given: SharesProps) => {
    drawings(<Shares {...given} />).forEach((svg, i) => {
      const { width } = i ? narrowSize : wideSize;
      const { height } = layoutShares(given, i ? narrowSize : wideSize);
      expect(broken(svg.replace(/aria-label="[^"]*"/, ""))).toBeUndefined();
      expect(svg).not.toMatch(/style/);
      expect(collisions(svg)).toEqual([]);
      for (const { x, y, w, h } of texts(svg)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x + w).toBeLessThanOrEqual(width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y + h).toBeLessThanOrEqual(height);
      }
      for (const [x, y] of reach(svg)) {
        expect(x).toBeGreaterThanOrEqual(-0.1);
        expect(x).toBeLessThanOrEqual(width + 0.1);
        expect(y).toBeGreaterThanOrEqual(-0.1);
        expect(y).toBeLessThanOrEqual(height + 0.1);
      }
    });
  };
  test.each(Object.entries(hardCases))("of %s stays inside, labels apart", (_, given) => expectClear(given));
  test("stays inside and keeps its labels apart, whatever is added", () => {
    fc.assert(fc.property(anyShares, expectClear));
  });
  test("tells what takes away by its sign and by another bar, not by colour alone", () => {
    const [svg = ""] = drawings(<Shares {...signed} />);
    expect(svg.match(/class="bar loss"/g)).toHaveLength(2);
    expect(svg.match(/class="hatch"/g)).toHaveLength(2);
    for (const text of ["+42.00 kPa", "−11.00 kPa", "−35.00 kPa", "+8.000 kPa", "4.000 kPa"])
      expect(svg).toContain(`>${text}<`);
    expect(drawings(<Shares {...props([1, 2])} />)[0]).not.toContain("+");
  });
  test("wraps a long label", () => {
    const label = "Straight pipe between the compressor and the cooler, with all its joints and clamps";
    const long = { ...signed, rows: [share(label, 1), share("short", 2)] };
    for (const size of [wideSize, narrowSize])
      expect(layoutShares(long, size).bars[0]?.names.length).toBeGreaterThan(1);
  });
  test("is left away where no part has a value", () => {
    const html = renderToString(<Shares {...props([Number.NaN], 3)} />);
    expect(html).not.toContain("<svg");
    expect(html).toContain("There is nothing to add up at this state.");
  });
});

describe("for those who do not see it", () => {
  test("the sentence gives the largest part, its part of the sum, and the sum", () => {
    expect(describeShares(props([3, 15, 2]))).toBe(
      "Where the pressure goes. The largest part is part 2, 15.00 kPa, 75 % of the sum. The sum is in all, 20.00 kPa.",
    );
  });
  test("and where parts take away, what adds most and what takes away most", () => {
    expect(describeShares(signed)).toBe(
      "Where the pressure goes. What adds most is part 1, 42.00 kPa. What takes away most is part 3, −35.00 kPa. The sum is in all, 4.000 kPa.",
    );
    expect(describeShares(props([-1, -2]))).not.toContain("adds");
  });
  test("and says so where every part is zero, or the sum is not known", () => {
    expect(describeShares(hardCases["parts that are all zero"])).toContain(
      "Every part is zero. The sum is in all, 0 kPa.",
    );
    expect(describeShares(hardCases["a missing sum"])).not.toContain("sum");
  });
  test("a table has all numbers, without what has no value", () => {
    const html = renderToString(<Shares {...hardCases["a missing part"]} />);
    const rows = [...html.matchAll(/<th scope="row">([^<]*)<\/th><td>([^<]*)</g)].map(([, name, number]) => [
      name,
      number,
    ]);
    expect(rows).toEqual([
      ["part 1", "1.000 kPa"],
      ["part 3", "2.000 kPa"],
      ["in all", "3.000 kPa"],
    ]);
  });
});
