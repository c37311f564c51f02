import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { temperatureField } from "../../../../calc/exchanger/field/temperature-field.ts";
import type { Layout } from "../../../../calc/exchanger/layout.ts";
import { layouts } from "../../../../calc/exchanger/layouts.ts";
import { describeHoses, HoseDrawing } from "../../../../src/widgets/pictures/HoseDrawing.tsx";
import { layoutHoses, size } from "../../../../src/widgets/pictures/hose-layout.ts";
import type { Point } from "../../../../src/widgets/pictures/path.ts";
import { broken, collisions, drawings, texts } from "./svg.ts";

const all = Object.entries(layouts) as [string, Layout][];
const shown = (layout: Layout) => drawings(<HoseDrawing layout={layout} />)[0] ?? "";
const ofKind = <K extends Layout["kind"]>(kind: K) =>
  all.filter((one): one is [string, Extract<Layout, { kind: K }>] => one[1].kind === kind);

const isSame = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.01;

/** Whether a point lies on a piece of a line. */
const isOn = ([x, y]: Point, a: Point, b: Point) =>
  Math.abs(
    Math.hypot(x - a[0], y - a[1]) + Math.hypot(x - b[0], y - b[1]) - Math.hypot(a[0] - b[0], a[1] - b[1]),
  ) < 0.01;

const piecesOf = (line: readonly Point[]) => line.slice(1).map((b, i) => [line[i] ?? b, b] as const);

const touch = (one: readonly Point[], other: readonly Point[]) =>
  [
    [one, other],
    [other, one],
  ].some(([points = [], line = []]) =>
    points.some((point) => piecesOf(line).some(([a, b]) => isOn(point, a, b))),
  );

/** The lines of water that hang together with the hose at a point. */
function reached(lines: readonly (readonly Point[])[], from: Point): readonly (readonly Point[])[] {
  const wet = lines.filter((line) => line.some((point) => isSame(point, from)));
  for (const line of wet) wet.push(...lines.filter((other) => !wet.includes(other) && touch(line, other)));
  return wet;
}

describe.each(all)("%s", (_, layout) => {
  const drawn = layoutHoses(layout);
  const inlet = drawn.ends.find(({ leads }) => leads === "in");
  const outlet = drawn.ends.find(({ leads }) => leads === "out");
  if (!inlet || !outlet) throw new Error("a hose is missing");

  test("water enters at the bottom, and its first pass across runs up", () => {
    expect(inlet.side).toBe("bottom");
    const first = drawn.passes.find(({ pass }) => pass === 1);
    if (layout.kind !== "along") expect(first?.runs).toEqual([0, -1]);
  });

  test("water comes from its hose through every line to the other hose", () => {
    const wet = reached(drawn.water, inlet.at);
    if (layout.kind === "side by side") {
      // The second pass stands behind the first.
      expect(wet).toHaveLength(drawn.water.length - 1);
      return;
    }
    expect(wet).toHaveLength(drawn.water.length);
    expect(wet.some((line) => line.some((point) => isSame(point, outlet.at)))).toBe(true);
  });

  test("every tip of water stands on its line and points along it, the way its pass runs", () => {
    for (const { at, to } of drawn.waterTips) {
      const ways = drawn.water
        .flatMap(piecesOf)
        .filter(([a, b]) => isOn(at, a, b))
        .map(([a, b]): Point => {
          const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
          return [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
        });
      expect(ways.some((way) => isSame(way, to))).toBe(true);
    }
  });

  test("air comes from the left and leaves to the right", () => {
    expect(drawn.air.length).toBeGreaterThanOrEqual(2);
    for (const [from, to] of drawn.air) {
      expect(to[0]).toBeGreaterThan(from[0]);
      expect(to[1]).toBe(from[1]);
    }
    const cores = [...drawn.cores.flat(), ...drawn.shells.map(({ x, y }): Point => [x, y])];
    expect(Math.min(...drawn.air.map(([from]) => from[0]))).toBeLessThan(Math.min(...cores.map(([x]) => x)));
    expect(Math.max(...drawn.air.map(([, to]) => to[0]))).toBeGreaterThan(Math.max(...cores.map(([x]) => x)));
  });

  test("its words and lines stand inside the drawing and apart, none under 13 px", () => {
    const svg = shown(layout);
    expect(collisions(svg)).toEqual([]);
    for (const { x, y, w, h, size: font } of texts(svg)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(x + w).toBeLessThanOrEqual(size.width);
      expect(y + h).toBeLessThanOrEqual(size.height);
      expect(font).toBeGreaterThanOrEqual(13);
    }
    const points = [drawn.cores, drawn.water, drawn.plates, drawn.air, drawn.bounds].flat(2);
    for (const [x, y] of points as Point[]) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(size.width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(size.height);
    }
  });

  test("can be drawn, without style attributes, and says its sentence", () => {
    const svg = shown(layout);
    const drawing = svg.replace(/aria-label="[^"]*"/, "");
    expect(broken(drawing)).toBeUndefined();
    expect(drawing).not.toMatch(/style/);
    expect(svg).toContain(`aria-label="${describeHoses(layout)}"`);
    expect(svg).toContain('role="img"');
  });
});

describe("passes across the air", () => {
  test.each(ofKind("across"))("%s stand and run as they are computed", (_, layout) => {
    const { passes } = layoutHoses(layout);
    // Rows that are fed side by side are banks of one pass.
    const banks = temperatureField(layout, 1, 1, 2).banks.filter(
      ({ pass }, i, list) => list.findIndex((other) => other.pass === pass) === i,
    );
    const byAir = [...passes].sort((a, b) => a.box.x - b.box.x);
    expect(byAir.map(({ pass }) => pass)).toEqual(banks.map(({ pass }) => pass));
    expect(byAir.map(({ runs }) => (runs[1] < 0 ? "up" : "down"))).toEqual(
      banks.map(({ waterRuns }) => waterRuns),
    );
  });

  test.each(ofKind("across"))("%s have one line for each channel", (_, layout) => {
    const { passes, waterTips } = layoutHoses(layout);
    for (const { box, runs } of passes) {
      const inside = waterTips.filter(
        ({ at, to }) =>
          at[0] > box.x &&
          at[0] < box.x + box.w &&
          at[1] > box.y &&
          at[1] < box.y + box.h &&
          isSame(to, runs),
      );
      if (layout.rows === "many") expect(inside.length).toBeGreaterThanOrEqual(3);
      else expect(inside).toHaveLength(layout.rows);
    }
  });

  test("fins run through all passes, through none, or part where the air is mixed between them", () => {
    const ends = (id: keyof typeof layouts) =>
      new Set(layoutHoses(layouts[id]).plates.map(([[from] = [0], [to] = [0]]) => `${from}-${to}`));
    expect(ends("counter-cross-2").size).toBe(1);
    expect(ends("counter-cross-2-remixed").size).toBe(2);
    expect(ends("cross-mixed").size).toBe(0);
    expect(layoutHoses(layouts["counter-cross-2"]).stirs).toEqual([]);
    expect(layoutHoses(layouts["counter-cross-2-remixed"]).stirs).not.toEqual([]);
    expect(layoutHoses(layouts["cross-air-mixed"]).stirs).not.toEqual([]);
  });

  /** Where each channel of the first pass leads, both counted in the way of the air. */
  const turns = (id: keyof typeof layouts) => {
    const { water, passes } = layoutHoses(layouts[id]);
    const [first, second] = passes;
    if (!first || !second) throw new Error("two passes are expected");
    const bends = water.filter((line) => line.length > 5);
    const columns = (of: (line: readonly Point[]) => Point | undefined) =>
      bends.map((line) => of(line)?.[0] ?? Number.NaN);
    const rank = (list: readonly number[]) => list.map((x) => list.filter((other) => other < x).length);
    return { from: rank(columns((line) => line[0])), to: rank(columns((line) => line.at(-1))) };
  };

  test("identical order: the first channel in one pass is the first in the next", () => {
    for (const id of ["counter-cross-2-rows-identical", "parallel-cross-2-rows-identical"] as const)
      expect(turns(id).to).toEqual(turns(id).from);
  });

  test("inverted order: the first channel in one pass is the last in the next", () => {
    for (const id of ["counter-cross-2-rows-inverted", "parallel-cross-2-rows-inverted"] as const)
      expect(turns(id).to).toEqual(turns(id).from.map((place) => 2 - place));
  });

  test("a header that mixes is one tank over both passes; bends have none", () => {
    const over = (id: keyof typeof layouts) => {
      const { tanks, passes } = layoutHoses(layouts[id]);
      return tanks.filter(({ y }) => y < (passes[0]?.box.y ?? 0));
    };
    expect(over("counter-cross-2-rows")).toHaveLength(1);
    expect(over("counter-cross-2-rows-inverted")).toHaveLength(0);
    expect(over("counter-cross-2-crossover")).toHaveLength(2);
  });

  test("bundles that a pipe leads across keep a pipe for each channel", () => {
    const layout: Layout = { ...layouts["counter-cross-2-rows-inverted"], next: "same way" };
    const { water, ends } = layoutHoses(layout);
    const [inlet] = ends;
    expect(reached(water, inlet?.at ?? [0, 0])).toHaveLength(water.length);
  });
});

describe("the sentence", () => {
  test("is another one for each arrangement", () => {
    const says = all.map(([, layout]) => describeHoses(layout));
    expect(new Set(says).size).toBe(all.length);
    for (const one of says) expect(one).toMatch(/^Air from left to right.*\.$/);
  });

  test("says where water enters and leaves, and what the turn does", () => {
    expect(describeHoses(layouts["counter-cross-2"])).toBe(
      "Air from left to right, kept apart by fins on its whole way. Water enters at the bottom of the second of two " +
        "passes in the way of the air, runs up, turns in a return header, runs down the first, and leaves at its " +
        "bottom. Each pass is one channel.",
    );
    expect(describeHoses(layouts["parallel-cross-3"])).toContain("leaves at the top of the last.");
    expect(describeHoses(layouts["counter-cross-4"])).toContain("leaves at the bottom of the first.");
    expect(describeHoses(layouts["counter-cross-2-crossover"])).toContain("is led down by a pipe");
    expect(describeHoses(layouts["parallel-cross-2-rows-inverted"])).toContain("the last in the next");
    expect(describeHoses(layouts.counterflow)).toContain("Water enters where the air leaves");
    expect(describeHoses(layouts["shell-2-4"])).toContain("two shells");
    expect(describeHoses(layouts["cross-three-rows"])).toContain(
      "runs up across the air in three channels, one behind the other, all fed at once, and leaves at the top.",
    );
  });

  test("stands beside the drawing under its name where that is given, and is not read out twice", () => {
    const html = renderToString(<HoseDrawing layout={layouts.counterflow} name="Counterflow" />);
    expect(html).toContain(`<b>Counterflow.</b> ${describeHoses(layouts.counterflow)}</p>`);
    expect(html).toContain('aria-hidden="true"');
    expect(shown(layouts.counterflow)).not.toContain('aria-hidden="true"');
  });

  test("is all that a drawing without words has", () => {
    const [svg = ""] = drawings(<HoseDrawing layout={layouts.counterflow} isBare />);
    expect(texts(svg)).toEqual([]);
    expect(svg).toContain(describeHoses(layouts.counterflow));
  });
});

test("a drawing is small enough for a list of all arrangements", () => {
  for (const [, layout] of all) expect(shown(layout).length).toBeLessThan(3000);
});
