import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Chart, describeChart } from "../../../../src/widgets/pictures/Chart.tsx";
import { layoutChart, narrowSize, wideSize } from "../../../../src/widgets/pictures/chart-layout.ts";
import type { ChartProps } from "../../../../src/widgets/pictures/types.ts";
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
  limit: { x: 3.5, label: "seldom reached in one stage", side: "above" },
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
  test("says where each curve begins and ends, the state and the limit", () => {
    const sentence = describeChart(density);
    expect(sentence).toContain("cooled to 50 °C: 0.9599 at 1.1, then 3.175 at 3.5.");
    expect(sentence).toContain("Here 1.974 at 2.20.");
    expect(sentence).toContain("seldom reached in one stage");
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
    const limit = { x: 3.5, label: "seldom reached.", side: "above" } as const;
    for (const title of ["Density ratio", "Density ratio.", "How dense is it?"]) {
      const sentence = describeChart({ ...density, title, limit });
      expect(sentence).not.toMatch(/[.?]\s*\./);
      expect(sentence).toMatch(/^(Density ratio\.|How dense is it\?) density ratio, cooler outlet/);
      expect(sentence).toMatch(/Hatched: seldom reached\.$/);
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
  test("widens the axes where it lies beyond them", () => {
    const state = { x: 6, y: 9, xText: "6.00", yText: "9.00" };
    const { frame, ring = [0, 0] } = layoutChart({ ...density, state }, narrowSize);
    expect(ring[0]).toBeLessThanOrEqual(frame.x + frame.w);
    expect(ring[1]).toBeGreaterThanOrEqual(frame.y);
  });
});

describe("the limit", () => {
  test("is hatched on the side out of bounds", () => {
    const { bound, frame } = layoutChart(density, wideSize);
    expect(bound && bound.x + bound.w).toBeCloseTo(frame.x + frame.w, 6);
    expect(bound?.x).toBeCloseTo(frame.x + (frame.w * 2.5) / 3.2, 6);
    const low = layoutChart({ ...density, limit: { x: 3.5, label: "low", side: "below" } }, wideSize);
    expect(low.bound?.x).toBe(frame.x);
  });
  test("of y leaves room beyond it", () => {
    for (const side of ["above", "below"] as const) {
      const y = side === "above" ? 150 : 120;
      const { bound } = layoutChart({ ...valley, limit: { y, label: "limit", side } }, wideSize);
      expect(bound?.h).toBeGreaterThan(20);
    }
  });
  test("draws nothing where all that is shown lies within it", () => {
    const limit = { x: 9, label: "far away", side: "above" } as const;
    expect(drawings(<Chart {...density} limit={limit} />)[wide]).not.toContain("hatch");
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
    limit: fc.option(fc.record({ x: anyNumber, side: fc.constantFrom("above" as const, "below" as const) })),
    bounds: fc.option(fc.tuple(anyNumber, anyNumber)),
  })
  .map(
    ({ from, span, heights, state, limit, bounds }): ChartProps => ({
      title: "Any chart",
      x: { label: "across", unit: "m", from, to: from + span },
      y: { label: "up", unit: "kW", ...(bounds && { from: bounds[0], to: bounds[1] }) },
      curves: heights.map((ys, i) => ({
        label: `curve ${i}`,
        points: ys.map((y, k) => [from + (span * k) / ys.length, y]),
      })),
      ...(state && { state: { x: state[0], y: state[1], xText: "x", yText: "y" } }),
      ...(limit && { limit: { ...limit, label: "a limit of two lines" } }),
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
    { ...valley, limit: { y: 142, label: "your limit: 142 kW", side: "above" as const } },
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
