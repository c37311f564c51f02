import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pointsAlong } from "../../../../src/calculators/engine/points-along.ts";
import { meet } from "../../../../src/widgets/pictures/boxes.ts";
import { Chart, describeChart } from "../../../../src/widgets/pictures/Chart.tsx";
import { layoutChart, narrowSize, wideSize } from "../../../../src/widgets/pictures/chart-layout.ts";
import type { Bound, ChartProps } from "../../../../src/widgets/pictures/types.ts";
import { broken, collisions, drawings, narrow, texts, walk, wide } from "./svg.ts";

const curve = (from: number, to: number, f: (x: number) => number, steps = 60) =>
  Array.from({ length: steps + 1 }, (_, i): [number, number] => {
    const x = from + ((to - from) * i) / steps;
    return [x, f(x)];
  });

const density: ChartProps = {
  title: "Density ratio and pressure ratio",
  x: { label: "pressure ratio of the compressor", unit: "", from: 1, to: 4.2 },
  y: { label: "density ratio, cooler outlet to inlet", unit: "" },
  curves: [
    { label: "cooled to 50 °C", points: curve(1.1, 3.5, (r) => (r - 0.06) * 0.923) },
    {
      label: "not cooled",
      dash: "alternative",
      points: curve(1.1, 3.5, (r) => r / (1 + (r ** 0.2857 - 1) / 0.74)),
    },
    { label: "if nothing heated it", dash: "ideal", points: curve(1.1, 3.3, (r) => r) },
  ],
  state: { x: 2.2, y: 1.974, xText: "2.20", yText: "1.974" },
  bounds: [{ x: 3.5, label: "seldom reached in one stage", wrong: "above" }],
};
const valley: ChartProps = {
  title: "Work",
  x: { label: "pressure ratio of the first stage", unit: "", from: 1.2, to: 2.8 },
  y: { label: "work of both stages", unit: "kW" },
  curves: [{ label: "both stages", points: curve(1.2, 2.8, (x) => 131.6 + 6 * (x - 1.4) ** 2) }],
  best: { x: 1.4, y: 131.6, label: "least work 131.6" },
};

const curvePaths = (svg = "") =>
  [...svg.matchAll(/class="curve [a-z]+" d="([^"]*)"/g)].map(([, d = ""]) => d);

describe("the sentence", () => {
  test("says where each curve begins and ends, and the state", () => {
    const sentence = describeChart(density);
    expect(sentence).toContain("cooled to 50 °C: 0.9599 at 1.1, then 3.175 at 3.5.");
    expect(sentence).toContain("Here 1.974 at 2.20.");
  });
  test("names bounds and bands with their values, and says so where nothing is within bounds", () => {
    const bands = [
      { from: 1.5, to: 2.5, label: "what is common" },
      { from: 8, to: 9, label: "out of sight" },
    ];
    const said = describeChart({ ...valley, bands, bounds: density.bounds ?? [] });
    expect(said).toContain("Shaded from 1.5 to 2.5: what is common.");
    expect(said).not.toContain("out of sight");
    expect(said).not.toContain("seldom reached");
    expect(describeChart(density)).toContain("Hatched above 3.5: seldom reached in one stage.");
    const none = [{ x: 0.5, label: "slowest", wrong: "above" as const }];
    expect(describeChart({ ...density, bounds: none })).toContain(
      "Hatched throughout, since all of it is above 0.5: slowest.",
    );
  });
  test("says where a curve turns", () => {
    expect(describeChart(valley)).toContain("131.8 kW at 1.2, then 131.6 kW at 1.387, then 143.4 kW at 2.8.");
    expect(describeChart(valley)).toContain("least work 131.6 at 1.4.");
  });
  test("says numbers in the units of the axes", () => {
    const x = { label: "engine speed", unit: "rpm", from: 1000, to: 3000 };
    const state = { x: 2000, y: 126.4, xText: "2000", yText: "126.4" };
    const best = { x: 1400, y: 131.6, label: "least work" };
    const sentence = describeChart({ ...valley, x, y: { label: "outlet", unit: "°C" }, state, best });
    expect(sentence).toContain("Here 126.4 °C at 2000 rpm.");
    expect(sentence).toContain("least work at 1400 rpm.");
  });
  test("puts one full stop after each part, whether or not its text brings one", () => {
    const bounds = [{ x: 3.5, label: "seldom reached.", wrong: "above" as const }];
    for (const title of ["Density ratio", "Density ratio.", "How dense is it?"]) {
      const sentence = describeChart({ ...density, title, bounds });
      expect(sentence).not.toMatch(/[.?]\s*\./);
      expect(sentence).toMatch(/^(Density ratio\.|How dense is it\?) density ratio, cooler outlet/);
      expect(sentence).toMatch(/Hatched above 3\.5: seldom reached\.$/);
    }
  });
  test("passes over a gap, and says where the rest begins and ends", () => {
    const points = curve(1, 4, (x) => (x > 2 && x < 3 ? Number.NaN : 10 * x), 6);
    expect(describeChart({ ...valley, curves: [{ label: "both", points }] })).toContain(
      "both: 10 kW at 1, then 40 kW at 4.",
    );
  });
  test("says so where a curve has no values", () => {
    const empty = [{ label: "not cooled", points: [[1, Number.NaN]] as const }];
    expect(describeChart({ ...density, curves: empty })).toContain("not cooled: no values here.");
  });
});

describe("curves", () => {
  test.each([wideSize, narrowSize])("stand where the axes say, within half a tenth of a pixel", (size) => {
    const { curves, xTicks, yTicks } = layoutChart(density, size);
    const read = (ticks: { text: string; at: number }[], at: number) => {
      const [a, b] = ticks;
      if (!a || !b) throw new Error("fewer than two ticks");
      return Number(a.text) + ((at - a.at) * (Number(b.text) - Number(a.text))) / (b.at - a.at);
    };
    density.curves.forEach(({ points }, i) => {
      const drawn = walk(curves[i]?.d ?? "");
      expect(drawn).toHaveLength(points.length);
      drawn.forEach(([x, y], k) => {
        expect(read(xTicks, x)).toBeCloseTo(points[k]?.[0] ?? 0, 2);
        expect(read(yTicks, y)).toBeCloseTo(points[k]?.[1] ?? 0, 2);
      });
    });
  });
  test("are solid, alternative and ideal", () => {
    const [svg = ""] = drawings(<Chart {...density} />);
    expect([...svg.matchAll(/class="curve ([a-z]+)"/g)].map(([, dash]) => dash)).toEqual([
      "solid",
      "alternative",
      "ideal",
    ]);
  });
  test("break where a point is not finite", () => {
    for (const gap of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      const points = curve(1.1, 3.5, (r) => (r > 2 && r < 2.2 ? gap : r));
      const props = { ...density, curves: [{ label: "broken", points }] };
      for (const d of drawings(<Chart {...props} />).flatMap(curvePaths)) {
        expect(d.match(/M/g)).toHaveLength(2);
        expect(broken(d)).toBeUndefined();
      }
    }
  });
  test("are cut at the frame, not squeezed into it", () => {
    const props: ChartProps = {
      ...density,
      y: { label: "y", unit: "", from: 0, to: 2 },
      curves: [
        {
          label: "",
          points: [
            [1, -2],
            [2, 4],
          ],
        },
      ],
      state: { x: 1.5, y: 1, xText: "1.5", yText: "1" },
    };
    const { frame, curves } = layoutChart(props, wideSize);
    const [from = [0, 0], to = [0, 0]] = walk(curves[0]?.d ?? "");
    const at = (x: number) => frame.x + (frame.w * (x - 1)) / 3.2;
    expect(from[0]).toBeCloseTo(at(1 + 1 / 3), 0);
    expect(to[0]).toBeCloseTo(at(1 + 2 / 3), 0);
    expect(from[1]).toBeCloseTo(frame.y + frame.h, 0);
    expect(to[1]).toBeCloseTo(frame.y, 0);
  });
});

describe("the state", () => {
  test("stands on its curve, with flags where ticks give way", () => {
    const { ring, flags, xTicks, yTicks } = layoutChart(density, wideSize);
    expect(ring).toBeDefined();
    expect(flags.map(({ text }) => text)).toEqual(["2.20", "1.974"]);
    expect(yTicks.find(({ text }) => text === "2.0")?.shown).toBe(false);
    expect(xTicks.find(({ text }) => text === "3.0")?.shown).toBe(true);
  });
  test.each([wideSize, narrowSize])(
    "has flags that stay in the drawing and clear of one another, long numbers and corners too",
    (size) => {
      const anyText = fc.constantFrom("0", "2.20", "0.001000", "1.435 × 10⁻⁴", "−1.435 × 10⁻¹²");
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 4.2, noNaN: true }),
          fc.double({ min: 0, max: 4, noNaN: true }),
          anyText,
          anyText,
          (x, y, xText, yText) => {
            const { flags } = layoutChart({ ...density, state: { x, y, xText, yText } }, size);
            const [a, b] = flags;
            if (!a || !b) throw new Error("a flag is missing");
            expect(meet(a, b)).toBe(false);
            for (const { x, y, w, h } of flags) {
              expect(x).toBeGreaterThanOrEqual(0);
              expect(x + w).toBeLessThanOrEqual(size.width);
              expect(y).toBeGreaterThanOrEqual(0);
              expect(y + h).toBeLessThanOrEqual(size.height);
            }
          },
        ),
      );
    },
  );
  test("widens the axes where it lies beyond them", () => {
    const state = { x: 6, y: 9, xText: "6.00", yText: "9.00" };
    const { frame, ring = [0, 0] } = layoutChart({ ...density, state }, narrowSize);
    expect(ring[0]).toBeLessThanOrEqual(frame.x + frame.w);
    expect(ring[1]).toBeGreaterThanOrEqual(frame.y);
  });
});

test("curves that are zero throughout stand on the foot of their axis", () => {
  const curves = [{ label: "", points: curve(1, 4, () => 0) }];
  const props = { ...density, curves, state: { x: 2, y: 0, xText: "2.00", yText: "0" } };
  const { yTicks, curves: drawn, frame } = layoutChart(props, wideSize);
  expect([yTicks[0]?.text, yTicks.at(-1)?.text]).toEqual(["0", "1.0"]);
  for (const [, y] of walk(drawn[0]?.d ?? "")) expect(y).toBeCloseTo(frame.y + frame.h, 0);
});

/** The least and the greatest x of a band or of what is hatched, as the axis reads it. */
const spanRead = (props: ChartProps, size: typeof wideSize, boxes: readonly { x: number; w: number }[]) => {
  const { frame } = layoutChart(props, size);
  const read = (at: number) => props.x.from + ((at - frame.x) * (props.x.to - props.x.from)) / frame.w;
  return boxes.map(({ x, w }) => [read(x), read(x + w)]);
};
const above = (x: number, label = "most"): Bound => ({ x, label, wrong: "above" });
const below = (x: number, label = "least"): Bound => ({ x, label, wrong: "below" });

describe.each([wideSize, narrowSize])("bounds and bands", (size) => {
  const hatchedFor = (bounds: readonly Bound[]) => {
    const props = { ...density, bounds };
    return spanRead(props, size, layoutChart(props, size).spans.hatched).map(([from = 0, to = 0]) => [
      Number(from.toFixed(6)),
      Number(to.toFixed(6)),
    ]);
  };
  test("are hatched on the wrong side to the edge", () => {
    expect(hatchedFor([above(3.5)])).toEqual([[3.5, 4.2]]);
    expect(hatchedFor([below(1.5)])).toEqual([[1, 1.5]]);
    expect(hatchedFor([below(1.5), above(3.5)])).toEqual([
      [1, 1.5],
      [3.5, 4.2],
    ]);
  });
  test("are hatched once where several are passed, and have a line each", () => {
    const bounds = [above(3.5), above(3), above(3, "another")];
    expect(hatchedFor(bounds)).toEqual([[3, 4.2]]);
    const { spans } = layoutChart({ ...density, bounds }, size);
    expect(spans.bounds.map(({ isHere }) => isHere)).toEqual([true, true, true]);
    expect(hatchedFor([below(3), above(2)])).toEqual([[1, 4.2]]);
  });
  test("are left out beyond the span, but hatch all of it where all is wrong", () => {
    expect(hatchedFor([above(9), below(0.5), above(4.2), below(1)])).toEqual([]);
    expect(hatchedFor([above(0.5)])).toEqual([[1, 4.2]]);
    expect(hatchedFor([below(9)])).toEqual([[1, 4.2]]);
    const { spans, labels } = layoutChart({ ...density, bounds: [above(0.5, "slowest")] }, size);
    expect(spans.bounds.map(({ isHere }) => isHere)).toEqual([false]);
    expect(labels.map(({ lines }) => lines.join(" "))).toContain("slowest");
    const svg = drawings(<Chart {...density} bounds={[above(9, "far away")]} />)[wide] ?? "";
    expect(svg).not.toContain("hatch");
    expect(svg).not.toContain("far away");
  });
  test("bands are cut at the span, and left out beyond it, the wrong way round or without a number", () => {
    const bandsFor = (...ends: [number, number][]) => {
      const bands = ends.map(([from, to]) => ({ from, to, label: `from ${from}` }));
      const props = { ...density, bands };
      return spanRead(
        props,
        size,
        layoutChart(props, size).spans.bands.map(({ box }) => box),
      ).map(([from = 0, to = 0]) => [Number(from.toFixed(6)), Number(to.toFixed(6))]);
    };
    expect(bandsFor([2, 3], [0, 1.5], [4, 9])).toEqual([
      [2, 3],
      [1, 1.5],
      [4, 4.2],
    ]);
    expect(bandsFor([5, 6], [0, 0.9], [3, 2], [Number.NaN, 2])).toEqual([]);
  });
  test("have names that cover neither one another nor those of the curves", () => {
    const at = fc.double({ min: 0.5, max: 4.7, noNaN: true });
    const words = fc.constantFrom("choke", "most that the hose bears", "surge of the first compressor");
    const anyBound = fc.record({
      x: fc.oneof(at, fc.constant(3)),
      label: words,
      wrong: fc.constantFrom("above" as const, "below" as const),
    });
    const anyBand = fc.record({ from: at, to: at, label: words });
    fc.assert(
      fc.property(
        fc.array(anyBound, { maxLength: 3 }),
        fc.array(anyBand, { maxLength: 1 }),
        (bounds, bands) => {
          const props = { ...density, bounds, bands };
          const svg = drawings(<Chart {...props} />)[size === wideSize ? wide : narrow] ?? "";
          expect(broken(svg.replace(/aria-label="[^"]*"/, ""))).toBeUndefined();
          const { frame, labels } = layoutChart(props, size);
          const covered = labels.flatMap((a, k) => labels.slice(k + 1).filter((b) => meet(a, b)));
          expect(covered).toEqual([]);
          for (const { x, y, w, h } of labels) {
            expect(x).toBeGreaterThanOrEqual(frame.x);
            expect(x + w).toBeLessThanOrEqual(frame.x + frame.w + 0.01);
            expect(y).toBeGreaterThanOrEqual(frame.y);
            expect(y + h).toBeLessThanOrEqual(frame.y + frame.h);
          }
        },
      ),
    );
  });
});

describe("where the model refuses", () => {
  const swept = (f: (x: number) => number): ChartProps => ({
    title: "Swept",
    x: { label: "x", unit: "", from: 0, to: 4 },
    y: { label: "y", unit: "kW" },
    curves: [{ label: "a", points: pointsAlong(f, 0, 4) }],
  });
  const highest = (props: ChartProps) => {
    const { yTicks } = layoutChart(props, wideSize);
    return Math.max(...yTicks.map(({ text }) => Number(text.replace(/\s/g, ""))));
  };
  test("a curve has a gap from the last value to the next", () => {
    const props = swept((x) => (x > 1.33 && x < 2.77 ? Number.NaN : 1 + x));
    const { curves, frame } = layoutChart(props, wideSize);
    const [before, after] = curves[0]?.runs ?? [];
    const read = (at = 0) => ((at - frame.x) * 4) / frame.w;
    expect(read(before?.at(-1)?.[0])).toBeCloseTo(1.33, 3);
    expect(read(after?.[0]?.[0])).toBeCloseTo(2.77, 3);
    expect(curves[0]?.runs).toHaveLength(2);
  });
  test("a curve that runs away towards its end leaves the axis to the rest, and is cut at the frame", () => {
    const props = swept((x) => (x < 3.33 ? 1 / (3.33 - x) : Number.NaN));
    const even = Math.max(...Array.from({ length: 34 }, (_, i) => 1 / (3.33 - i / 10)));
    expect(highest(props)).toBeLessThan(2 * even);
    const { curves, frame } = layoutChart(props, wideSize);
    expect(curves[0]?.runs.at(-1)?.at(-1)?.[1]).toBeCloseTo(frame.y, 6);
    // Nor does the sentence tell of a number that nobody sees.
    const last = describeChart(props).match(/then ([\d.]+) kW at/)?.[1];
    expect(Number(last)).toBeLessThan(2 * even);
  });
  test("a curve that ends at a height is seen to its end", () => {
    const { curves, frame } = layoutChart(
      swept((x) => Math.sqrt(3.33 - x)),
      wideSize,
    );
    const end = curves[0]?.runs.at(-1)?.at(-1);
    expect(((end?.[0] ?? 0) - frame.x) / frame.w).toBeCloseTo(3.33 / 4, 3);
    expect(end?.[1]).toBeGreaterThan(frame.y + 0.97 * frame.h);
  });
  test("and a curve of few values shows them all", () => {
    const props = swept((x) => (x > 0.07 && x < 0.13 ? 50 * x : Number.NaN));
    expect(highest(props)).toBeGreaterThanOrEqual(6);
    expect(layoutChart(props, wideSize).curves[0]?.runs).toHaveLength(1);
  });
  test("curves may be there in different parts of the span, or not at all", () => {
    const parts = [
      (x: number) => (x < 1 ? x : Number.NaN),
      (x: number) => (x > 3 ? x : Number.NaN),
      () => Number.NaN,
    ];
    const curves = parts.map((f, i) => ({ label: `part ${i}`, points: pointsAlong(f, 0, 4) }));
    const props = { ...swept(Math.abs), curves };
    const { labels } = layoutChart(props, narrowSize);
    expect(labels.map(({ lines }) => lines.join(" ")).sort()).toEqual(["part 0", "part 1"]);
    expect(describeChart(props)).toContain("part 2: no values here.");
    expect(
      broken((drawings(<Chart {...props} />)[narrow] ?? "").replace(/aria-label="[^"]*"/, "")),
    ).toBeUndefined();
  });
});

const anyNumber = fc.oneof(
  { weight: 5, arbitrary: fc.double({ min: -1e4, max: 1e4 }) },
  { weight: 1, arbitrary: fc.double() },
);
const anyChart = fc
  .record({
    from: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
    span: fc.double({ min: 0, max: 1e4, noNaN: true }),
    heights: fc.array(fc.array(anyNumber, { maxLength: 20 }), { minLength: 1, maxLength: 4 }),
    state: fc.option(fc.tuple(anyNumber, anyNumber)),
    bounds: fc.array(fc.tuple(anyNumber, fc.constantFrom("above" as const, "below" as const)), {
      maxLength: 3,
    }),
    bands: fc.array(fc.tuple(anyNumber, anyNumber), { maxLength: 2 }),
    heightsSpan: fc.option(fc.tuple(anyNumber, anyNumber)),
  })
  .map(
    ({ from, span, heights, state, bounds, bands, heightsSpan }): ChartProps => ({
      title: "Any chart",
      x: { label: "across", unit: "m", from, to: from + span },
      y: { label: "up", unit: "kW", ...(heightsSpan && { from: heightsSpan[0], to: heightsSpan[1] }) },
      curves: heights.map((ys, i) => ({
        label: `curve ${i}`,
        points: ys.map((y, k) => [from + (span * k) / ys.length, y]),
      })),
      ...(state && { state: { x: state[0], y: state[1], xText: "x", yText: "y" } }),
      bounds: bounds.map(([x, wrong]) => ({ x, wrong, label: "a bound of two lines" })),
      bands: bands.map(([a, b]) => ({ from: a, to: b, label: "a band" })),
    }),
  );

describe("the drawing", () => {
  test("has neither style attributes nor numbers that cannot be drawn, whatever the data", () => {
    fc.assert(
      fc.property(anyChart, (props) => {
        for (const svg of drawings(<Chart {...props} />)) {
          const drawn = svg.replace(/aria-label="[^"]*"/, "");
          expect(broken(drawn)).toBeUndefined();
          expect(drawn).not.toMatch(/style/);
        }
      }),
    );
  });
  test("never draws outside its frame", () => {
    fc.assert(
      fc.property(anyChart, (props) => {
        const { frame, curves } = layoutChart(props, narrowSize);
        for (const [x, y] of curves.flatMap(({ d }) => walk(d))) {
          expect(x).toBeGreaterThan(frame.x - 0.2);
          expect(x).toBeLessThan(frame.x + frame.w + 0.2);
          expect(y).toBeGreaterThan(frame.y - 0.2);
          expect(y).toBeLessThan(frame.y + frame.h + 0.2);
        }
      }),
    );
  });
  test.each([
    density,
    valley,
    { ...valley, bounds: [{ x: 2.4, label: "your bound", wrong: "above" as const }] },
  ])("keeps its labels apart", (props) => {
    for (const svg of drawings(<Chart {...props} />)) expect(collisions(svg)).toEqual([]);
  });
  test("keeps labels off curves where curves leave room", () => {
    for (const size of [wideSize, narrowSize]) {
      const { labels, curves } = layoutChart(density, size);
      for (const { x, y, w, h } of labels) {
        const crossing = curves
          .flatMap(({ runs }) => runs.flat())
          .filter(([px, py]) => px > x && px < x + w && py > y && py < y + h);
        expect(crossing).toEqual([]);
      }
    }
  });
  test.each([wideSize, narrowSize])("stands each name by its own curve, with no other between", (size) => {
    // Three ways to cool, close together at first and two of them at the end.
    const names = ["hoses swapped", "hoses the right way", "counterflow"];
    const cooling: ChartProps = {
      ...valley,
      x: { label: "size", unit: "W/K", from: 200, to: 4400 },
      y: { label: "air after it", unit: "°C" },
      curves: [
        { label: names[0] ?? "", points: curve(200, 4400, (x) => 36 + 120 * Math.exp(-x / 330)) },
        {
          label: names[1] ?? "",
          dash: "alternative",
          points: curve(200, 4400, (x) => 23 + 140 * Math.exp(-x / 400)),
        },
        {
          label: names[2] ?? "",
          dash: "ideal",
          points: curve(200, 4400, (x) => 22 + 140 * Math.exp(-x / 380)),
        },
      ],
      state: { x: 560, y: 58, xText: "560", yText: "58.0" },
      best: { x: 2200, y: 36.1, label: "best size" },
    };
    const { labels, curves } = layoutChart(cooling, size);
    expect(labels).toHaveLength(4);
    names.forEach((name, i) => {
      const label = labels.find(({ lines }) => lines.join(" ") === name);
      if (!label) throw new Error(`${name} is not there`);
      // Straight up and down from the label: the first curve that is met, but for those as near.
      const away = curves.map(({ outline }) => {
        const [high = 0, low = 0] = outline(label.x - 10, label.x + label.w) ?? [];
        return Math.max(0, high - label.y - label.h, label.y - low);
      });
      expect(away[i]).toBeLessThan(Math.min(...away) + 1);
      expect(away[i]).toBeLessThan(30);
    });
    expect(collisions(drawings(<Chart {...cooling} />)[size === wideSize ? wide : narrow] ?? "")).toEqual([]);
  });
  test.each([wideSize, narrowSize])("names a curve where it is apart from the others", (size) => {
    // Two ways to count a loss: one curve as long as it is small.
    const ends = { x: 1.58, label: "chokes", wrong: "above" as const };
    const square = (x: number) => (x < ends.x ? 31 * x ** 2 : Number.NaN);
    const thinning = (x: number) => square(x) + 9 * (x / ends.x) ** 4 + 70 * (x / ends.x) ** 12;
    const loss: ChartProps = {
      ...density,
      x: { label: "flow", unit: "kg/s", from: 0.05, to: 1.8 },
      y: { label: "loss", unit: "kPa" },
      curves: [
        { label: "with air that thins", points: curve(0.05, 1.8, thinning) },
        { label: "with one density", dash: "alternative", points: curve(0.05, 1.8, square) },
      ],
      state: { x: 0.35, y: thinning(0.35), xText: "0.3500", yText: "3.764" },
      bounds: [ends],
    };
    const { labels, curves } = layoutChart(loss, size);
    for (const name of ["with air that thins", "with one density"]) {
      const label = labels.find(({ lines }) => lines.join(" ") === name);
      if (!label) throw new Error(`${name} is not there`);
      // At the end of the label that is nearer to the end of the curves.
      const at = label.x + label.w;
      const [a = 0, b = 0] = curves.map(({ outline }) => outline(at, at)?.[0]);
      expect(Math.abs(a - b)).toBeGreaterThan(size.font);
    }
  });
  test("keeps ticks apart where their numbers are long", () => {
    const long: ChartProps = {
      ...valley,
      x: { label: "altitude", unit: "m", from: 0, to: 900_000 },
      curves: [{ label: "a", points: curve(0, 900_000, (x) => 2e6 - x) }],
    };
    expect(collisions(drawings(<Chart {...long} />)[narrow] ?? "")).toEqual([]);
  });
  test("has no text under 13 px where it is shown", () => {
    const [wideSvg = "", narrowSvg = ""] = drawings(<Chart {...density} />);
    for (const { size } of texts(narrowSvg)) expect(size * (326 / 350)).toBeGreaterThanOrEqual(13);
    for (const { size } of texts(wideSvg)) expect(size * (696 / 800)).toBeGreaterThanOrEqual(13);
  });
  test("wraps a name that is wider than the drawing", () => {
    const label = "temperature of the air after the second stage, before the second cooler";
    const [, svg = ""] = drawings(<Chart {...valley} y={{ label, unit: "°C" }} />);
    for (const { x, w } of texts(svg)) expect(x + w).toBeLessThanOrEqual(350);
  });
});
