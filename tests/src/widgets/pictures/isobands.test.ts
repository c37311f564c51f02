import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { linesOf, ringsAbove } from "../../../../src/widgets/pictures/isobands.ts";
import { type Point, thin } from "../../../../src/widgets/pictures/path.ts";

/** Even and odd: whether a point lies within rings. */
const isWithin = ([x, y]: Point, rings: readonly (readonly Point[])[]) =>
  rings
    .flatMap((ring) => ring.slice(1).map((b, i) => [ring[i] ?? b, b] as const))
    .filter(([a, b]) => a[1] > y !== b[1] > y && x < a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]))
    .length %
    2 ===
  1;

const cellsOf = (columns: number, rows: number, f: (x: number, y: number) => number) => ({
  columns,
  rows,
  values: Array.from({ length: columns * rows }, (_, i) =>
    f(((i % columns) + 0.5) / columns, (Math.floor(i / columns) + 0.5) / rows),
  ),
});

const plane = fc.record({
  a: fc.double({ min: 0, max: 0.5, noNaN: true }),
  b: fc.double({ min: 0, max: 0.5, noNaN: true }),
  columns: fc.integer({ min: 2, max: 9 }),
  rows: fc.integer({ min: 2, max: 9 }),
  level: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
});

describe("rings", () => {
  test("part an even slope exactly where it has the level, up to the edges", () => {
    fc.assert(
      fc.property(
        plane,
        fc.array(
          fc.tuple(
            fc.double({ min: 0.01, max: 0.99, noNaN: true }),
            fc.double({ min: 0.01, max: 0.99, noNaN: true }),
          ),
          { minLength: 1, maxLength: 20 },
        ),
        ({ a, b, columns, rows, level }, spots) => {
          const f = (x: number, y: number) => a * x + b * y;
          const rings = ringsAbove(cellsOf(columns, rows, f), level);
          for (const [x, y] of spots) {
            if (Math.abs(f(x, y) - level) > 1e-6) expect(isWithin([x, y], rings)).toBe(f(x, y) > level);
          }
        },
      ),
    );
  });

  test("hold the cells that are warmer, and no other, whatever the field", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 20, maxLength: 20 }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (values, level) => {
          const rings = ringsAbove({ columns: 5, rows: 4, values }, level);
          values.forEach((value, i) => {
            const at: Point = [((i % 5) + 0.5) / 5, (Math.floor(i / 5) + 0.5) / 4];
            if (Math.abs(value - level) > 1e-3) expect(isWithin(at, rings)).toBe(value > level);
          });
        },
      ),
    );
  });

  test("rise to the right way: rows are counted from the bottom", () => {
    const rings = ringsAbove(
      cellsOf(4, 4, (_, y) => y),
      0.5,
    );
    expect(isWithin([0.5, 0.9], rings)).toBe(true);
    expect(isWithin([0.5, 0.1], rings)).toBe(false);
  });

  test("are the whole where all is warmer, and none where nothing is", () => {
    const even = cellsOf(3, 3, () => 0.5);
    const [ring = []] = ringsAbove(even, 0.4);
    expect(thin(ring, 1e-6)).toHaveLength(5);
    expect(ringsAbove(even, 0.6)).toEqual([]);
  });
});

describe("lines", () => {
  test("have their temperature everywhere, and run from edge to edge", () => {
    fc.assert(
      fc.property(plane, ({ a, b, columns, rows, level }) => {
        const f = (x: number, y: number) => a * x + b * y;
        const lines = ringsAbove(cellsOf(columns, rows, f), level).flatMap(linesOf);
        for (const line of lines) {
          // Where a line meets an edge, it may run a little way along that.
          for (const [x, y] of line) {
            const isAtEdge = [x, y].some((v) => v === 0 || v === 1);
            if (!isAtEdge) expect(f(x, y)).toBeCloseTo(level, 6);
          }
          for (const end of [line[0], line.at(-1)]) {
            expect(
              end?.some((v) => v < 0.51 / Math.min(columns, rows) || v > 1 - 0.51 / Math.min(columns, rows)),
            ).toBe(true);
          }
        }
      }),
    );
  });

  test("of a ring within the field are that ring", () => {
    const hill = cellsOf(9, 9, (x, y) => 1 - Math.hypot(x - 0.5, y - 0.5));
    const rings = ringsAbove(hill, 0.8);
    expect(rings).toHaveLength(1);
    expect(rings.flatMap(linesOf)).toEqual(rings);
  });
});

describe("a line with fewer points", () => {
  const walk = fc.array(
    fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true })),
    { minLength: 2, maxLength: 40 },
  );
  const away = ([x, y]: Point, a: Point, b: Point) => {
    const long = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2;
    const u = long > 0 ? ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / long : 0;
    const at = Math.max(0, Math.min(1, u));
    return Math.hypot(x - a[0] - at * (b[0] - a[0]), y - a[1] - at * (b[1] - a[1]));
  };

  test("keeps its ends and stays near, and a ring stays a ring", () => {
    fc.assert(
      fc.property(walk, fc.boolean(), (points: Point[], isClosed) => {
        const [first] = points;
        const line = isClosed && first ? [...points, first] : points;
        const short = thin(line, 2);
        expect(short[0]).toBe(line[0]);
        expect(short.at(-1)).toBe(line.at(-1));
        for (const point of short) expect(line).toContain(point);
        const spread = Math.max(
          ...line.map((point) => Math.hypot(point[0] - (first?.[0] ?? 0), point[1] - (first?.[1] ?? 0))),
        );
        if (isClosed && spread > 2) expect(short.length).toBeGreaterThan(2);
      }),
    );
  });

  test("leaves out nothing further off than asked, on a smooth line", () => {
    const arc = Array.from({ length: 80 }, (_, i): Point => [100 * Math.cos(i / 20), 100 * Math.sin(i / 20)]);
    const short = thin(arc, 0.3);
    expect(short.length).toBeLessThan(40);
    for (const point of arc) {
      const near = short.slice(1).map((b, i) => away(point, short[i] ?? b, b));
      expect(Math.min(...near)).toBeLessThanOrEqual(0.3);
    }
  });
});
