import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CurveFamily, describeFamily } from "../../../../src/widgets/pictures/CurveFamily.tsx";
import {
  type FamilyProps,
  layoutFamily,
  narrowSize,
  spread,
  wideSize,
} from "../../../../src/widgets/pictures/family-layout.ts";
import { type Point, thin } from "../../../../src/widgets/pictures/path.ts";
import { broken, collisions, drawings, texts, walk } from "./svg.ts";

const curve = (f: (x: number) => number): Point[] =>
  Array.from({ length: 81 }, (_, i): Point => [i / 10, f(i / 10)]);

/** Curves that end close together, one of which turns. */
const family: FamilyProps = {
  title: "Any family",
  x: { label: "transfer units", unit: "", from: 0, to: 8 },
  y: { label: "effectiveness", unit: "", from: 0, to: 1 },
  by: "R",
  curves: [
    ...[0, 0.25, 0.5, 0.75, 1].map((R) => ({
      label: String(R),
      points: curve((x) => 1 - Math.exp(-x * (1 - R / 4))),
    })),
    { label: "4", points: curve((x) => 0.2 - 0.01 * (x - 3) ** 2), best: [3, 0.2] },
  ],
};

describe("labels", () => {
  test("stand at the ends of their curves, in their order, and apart", () => {
    for (const size of [wideSize, narrowSize]) {
      const { labels, frame } = layoutFamily(family, size);
      expect(labels.map(({ text }) => text)).toEqual(["0", "0.25", "0.5", "0.75", "1", "4"]);
      labels.forEach(({ x, y }, i) => {
        expect(x).toBeGreaterThan(frame.x + frame.w);
        const above = labels[i - 1]?.y ?? 0;
        expect(y - above).toBeGreaterThanOrEqual(size.font);
      });
    }
  });
  test("collide with nothing, stay on the drawing, and are never under 13 px where they are shown", () => {
    const [wide = "", narrow = ""] = drawings(<CurveFamily {...family} />);
    for (const [svg, { width }, shown] of [
      [wide, wideSize, 696],
      [narrow, narrowSize, 326],
    ] as const) {
      expect(collisions(svg)).toEqual([]);
      for (const { x, w, size } of texts(svg)) {
        expect(x + w).toBeLessThanOrEqual(width);
        expect((size * shown) / width).toBeGreaterThanOrEqual(13);
      }
    }
  });
});

describe("spread", () => {
  const anyHeights = fc
    .array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 12 })
    .map((heights) => heights.sort((a, b) => a - b));
  test("keeps the order, the gap and the span", () => {
    fc.assert(
      fc.property(anyHeights, (heights) => {
        const moved = spread(heights, 20, [0, 300]);
        moved.forEach((height, i) => {
          expect(height - (moved[i - 1] ?? -20)).toBeGreaterThan(20 - 1e-9);
          expect(height).toBeLessThan(300 + 1e-9);
        });
      }),
    );
  });
  test("leaves alone what is apart, and moves a crowd as little as it can", () => {
    expect(spread([10, 40, 90], 20, [0, 300])).toEqual([10, 40, 90]);
    expect(spread([100, 100, 250], 20, [0, 300])).toEqual([90, 110, 250]);
    expect(spread([0, 0, 0], 20, [0, 300])).toEqual([0, 20, 40]);
  });
});

test("a thinned line keeps its ends and runs within its tolerance of every point it left out", () => {
  const points = curve((x) => 100 * Math.sin(x));
  const kept = thin(points, 0.5);
  expect(kept.length).toBeLessThan(points.length / 2);
  expect([kept[0], kept.at(-1)]).toEqual([points[0], points.at(-1)]);
  for (const [x, y] of points) {
    const after = kept.findIndex(([at]) => at >= x);
    const [b = [0, 0], a = b] = [kept[after], kept[after - 1]];
    const on = a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0] || 1);
    // The distance to the piece is less than the one straight up.
    const slope = (b[1] - a[1]) / (b[0] - a[0] || 1);
    expect(Math.abs(on - y) / Math.hypot(1, slope)).toBeLessThanOrEqual(0.5 + 1e-9);
  }
});

describe("the drawing", () => {
  test("says where each curve begins, turns and ends", () => {
    const said = describeFamily(family);
    expect(said).toContain("R = 0: 0 at 0, then 0.9997 at 8.");
    expect(said).toContain("R = 4: 0.11 at 0, then 0.2 at 3, then −0.05 at 8.");
  });
  test("has a cross where a curve turns, and only there", () => {
    for (const svg of drawings(<CurveFamily {...family} />))
      expect(svg.match(/l10 10m0 -10l-10 10/g)).toHaveLength(1);
  });
  test("draws every curve inside the frame, with nothing that cannot be drawn", () => {
    const gaps = [...family.curves, { label: "9", points: curve((x) => (x > 4 ? Number.NaN : 2 * x)) }];
    for (const svg of drawings(<CurveFamily {...family} curves={gaps} />))
      expect(broken(svg.replace(/aria-label="[^"]*"/, ""))).toBeUndefined();
    const { frame, curves } = layoutFamily({ ...family, curves: gaps }, narrowSize);
    for (const [x, y] of curves.flatMap(({ d }) => walk(d))) {
      expect(x).toBeGreaterThan(frame.x - 0.2);
      expect(x).toBeLessThan(frame.x + frame.w + 0.2);
      expect(y).toBeGreaterThan(frame.y - 0.2);
      expect(y).toBeLessThan(frame.y + frame.h + 0.2);
    }
  });
});
