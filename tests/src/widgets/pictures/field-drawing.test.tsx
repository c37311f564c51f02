import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { temperatureField } from "../../../../calc/exchanger/field/temperature-field.ts";
import type { Layout } from "../../../../calc/exchanger/layout.ts";
import { layouts } from "../../../../calc/exchanger/layouts.ts";
import { describeField, FieldDrawing } from "../../../../src/widgets/pictures/FieldDrawing.tsx";
import { bandsOf, cellsOf, levelsOf } from "../../../../src/widgets/pictures/field-bands.ts";
import {
  type FieldProps,
  layoutField,
  narrowSize,
  wideSize,
} from "../../../../src/widgets/pictures/field-layout.ts";
import { marksOf, temperatureIn } from "../../../../src/widgets/pictures/field-marks.ts";
import { broken, collisions, drawings, reach, texts } from "./svg.ts";

const kelvin = (celsius: number) => celsius + 273.15;
const celsius = {
  show: (T: number) => ({ number: (T - 273.15).toFixed(1).replace("-", "−"), unit: "°C" }),
  scale: { unit: "°C", shown: (T: number) => T - 273.15, kelvin },
};
const fahrenheit = {
  show: (T: number) => ({ number: (1.8 * T - 459.67).toFixed(1).replace("-", "−"), unit: "°F" }),
  scale: {
    unit: "°F",
    shown: (T: number) => 1.8 * T - 459.67,
    kelvin: (t: number) => (t + 459.67) / 1.8,
  },
};

const withField = (Object.entries(layouts) as [keyof typeof layouts, Layout][]).filter(
  ([, { kind }]) => kind !== "shell",
);

const picture = (
  id: keyof typeof layouts,
  { NTU = 2.2, R = 0.4, hot = kelvin(160), cold = kelvin(24), scale = celsius } = {},
): FieldProps => ({
  title: "The field inside.",
  layout: layouts[id],
  field: temperatureField(layouts[id], NTU, R, 28),
  hot,
  cold,
  ...scale,
});

const sizes = [wideSize, narrowSize];
const anyState = fc.record({
  id: fc.constantFrom(...withField.map(([id]) => id)),
  NTU: fc.double({ min: 0, max: 8, noNaN: true }),
  R: fc.double({ min: 0, max: 3, noNaN: true }),
  hot: fc.double({ min: 250, max: 600, noNaN: true }),
  cold: fc.double({ min: 250, max: 400, noNaN: true }),
  scale: fc.constantFrom(celsius, fahrenheit),
});

describe.each(withField)("%s", (id, layout) => {
  const props = picture(id);
  const marks = marksOf(props);
  const T = temperatureIn(props);

  test("marks the hottest and the coolest of the leaving air, at their heights", () => {
    const out = Array.from(props.field.airOut, T);
    expect(marks.hottest.T).toBe(Math.max(...out));
    expect(marks.coolest.T).toBe(Math.min(...out));
    for (const size of sizes) {
      const { profile, panels } = layoutField(props, size);
      const [air] = panels;
      if (marks.isEven) {
        expect(profile.labels).toEqual([]);
        continue;
      }
      for (const [label, { y }] of [
        [profile.labels[0], marks.hottest],
        [profile.labels[1], marks.coolest],
      ] as const) {
        // Up is up: a stripe stands as high beside the core as it leaves it, with room between two halves.
        const share = (air.core.y + air.core.h - (label?.at[1] ?? 0)) / air.core.h;
        if (layout.kind === "side by side") expect(share > 0.5).toBe(y > 0.5);
        else expect(share).toBeCloseTo(y, 6);
      }
    }
  });

  test("prints the temperatures of the streams, of the stripes and of the hot end", () => {
    const { hotEnd } = marks;
    const bank = props.field.banks[hotEnd.bank];
    const warmest = Math.max(
      ...props.field.banks.flatMap(({ airCells, waterCells }) =>
        Array.from(airCells, (air, i) => (T(air) + T(waterCells[i] ?? Number.NaN)) / 2),
      ),
    );
    expect((hotEnd.air + hotEnd.water) / 2).toBeGreaterThan(warmest);
    expect(Math.max(hotEnd.air, hotEnd.water)).toBeLessThanOrEqual(props.hot);
    expect(bank?.x).toContain(hotEnd.x);
    if (!hotEnd.isWholeHeight) expect(bank?.y).toContain(hotEnd.y);
    const sentence = describeField(props, props.show);
    const said = (value: number) => `${props.show(value).number}\u00a0°C`;
    const all = [props.hot, props.cold, marks.airOut, marks.waterOut, hotEnd.air, hotEnd.water];
    for (const value of [...all, ...(marks.isEven ? [] : [marks.hottest.T, marks.coolest.T])])
      expect(sentence).toContain(said(value));
    for (const svg of drawings(<FieldDrawing {...props} />)) {
      const words = texts(svg).map(({ text }) => text);
      expect(words).toContain(`hot end ${props.show(hotEnd.air).number}`);
      expect(words).toContain(`hot end ${props.show(hotEnd.water).number}`);
      expect(words).toContain(`mean ${props.show(marks.airOut).number}`);
      expect(words).toContain(`Air in at ${props.show(props.hot).number} °C`);
      expect(words).toContain(`${props.show(props.cold).number} °C`);
      expect(words).toContain(`${props.show(marks.waterOut).number} °C`);
      expect(words.some((text) => text.startsWith("hottest"))).toBe(!marks.isEven);
      expect(svg).toContain(`aria-label="${props.title} ${sentence}"`);
    }
  });

  test("colours each cell by its own temperature, in its own place", () => {
    const { columns, rows } = props.field;
    for (const panel of layoutField(props, wideSize).panels) {
      const levels = levelsOf(props, panel.stream, props.scale);
      const { bands } = bandsOf(props, panel, props.scale);
      const inside = (x: number, y: number, rings: (typeof bands)[number]["rings"]) =>
        rings
          .flatMap((ring) => ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a] as const))
          .filter(
            ([a, b]) => a[1] > y !== b[1] > y && x < a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]),
          ).length %
          2 ===
        1;
      const span = (i: number) => Math.abs((levels[i]?.share ?? 0) - (levels[i + 1]?.share ?? 0));
      panel.banks.forEach((box, bank) => {
        const cells = cellsOf(props.field, panel.stream)[bank] ?? [];
        for (const [ix, iy] of [
          [2, 2],
          [14, 20],
          [25, 5],
          [25, 25],
          [3, 24],
        ] as const) {
          const x = box.x + ((ix + 0.5) / columns) * box.w;
          const y = box.y + (1 - (iy + 0.5) / rows) * box.h;
          const share = cells[iy * columns + ix] ?? Number.NaN;
          levels.forEach((level, i) => {
            if (Math.abs(share - level.share) < 0.05 * span(0)) return;
            expect(inside(x, y, bands[i + 1]?.rings ?? [])).toBe(share > level.share);
          });
        }
      });
    }
  });

  test("stands inside its width, and its labels apart and on the core", () => {
    drawings(<FieldDrawing {...props} />).forEach((svg, i) => {
      const size = sizes[i] ?? wideSize;
      const { height } = layoutField(props, size);
      expect(collisions(svg)).toEqual([]);
      for (const { text, x, y, w, h } of texts(svg)) {
        expect([text, x >= 0, y >= 0]).toEqual([text, true, true]);
        expect([text, x + w <= size.width, y + h <= height]).toEqual([text, true, true]);
      }
    });
    drawings(<FieldDrawing {...props} />).forEach((svg, i) => {
      const { width } = sizes[i] ?? wideSize;
      const { height } = layoutField(props, sizes[i] ?? wideSize);
      const points = reach(svg);
      expect(points.length).toBeGreaterThan(100);
      for (const [x, y] of points) expect([x >= 0, x <= width, y >= 0, y <= height]).not.toContain(false);
    });
    for (const size of sizes) {
      const { labels, panels, flags } = layoutField(props, size);
      for (const { x, y, w, h } of labels) {
        const on = panels.filter(
          ({ core }) => x >= core.x && y >= core.y && x + w <= core.x + core.w && y + h <= core.y + core.h,
        );
        expect(on).toHaveLength(1);
      }
      expect(flags).toHaveLength(2);
    }
  });

  test("has a hose in and a hose out, on the water that is computed", () => {
    for (const size of sizes) {
      const { ends } = layoutField(props, size);
      expect(ends.map(({ name }) => name).sort()).toEqual(["out", "water in"]);
    }
    // The water of the first pass is coldest where it enters: at the bottom, or at the end of a channel along the air.
    const { field } = props;
    const first = field.banks.find(({ pass }) => pass === 1);
    const cells = first?.waterCells ?? [];
    const mean = (iy: number) =>
      Array.from({ length: field.columns }, (_, ix) => cells[iy * field.columns + ix] ?? 0).reduce(
        (sum, one) => sum + one,
      ) / field.columns;
    if (layout.kind !== "along") expect(mean(0)).toBeLessThan(mean(field.rows - 1));
  });

  test("has at most nine bands a panel, and is small", () => {
    for (const stream of ["air", "water"] as const) {
      const levels = levelsOf(props, stream, props.scale);
      expect(levels.length).toBeGreaterThan(2);
      expect(levels.length).toBeLessThanOrEqual(8);
    }
    const html = renderToString(<FieldDrawing {...props} />);
    expect(gzipSync(html, { level: 9 }).length).toBeLessThan(5000);
  });
});

describe("lines", () => {
  test("stand at round temperatures on the reader's own scale", () => {
    const found = (scale: typeof celsius) =>
      levelsOf(picture("counter-cross-2", { scale }), "air", scale.scale).map(({ text }) => text);
    expect(found(celsius)).toEqual(["60", "80", "100", "120", "140"]);
    expect(found(fahrenheit)).toEqual(["150", "200", "250", "300"]);
  });
  test("are left out where streams differ by less than a degree", () => {
    const close = picture("counter-cross-2", { hot: kelvin(25), cold: kelvin(24.5) });
    expect(levelsOf(close, "air", celsius.scale)).toEqual([]);
    expect(broken(drawings(<FieldDrawing {...close} />)[0] ?? "")).toBeUndefined();
  });
  test("of one channel lie level, for its water is mixed", () => {
    const props = picture("counter-cross-3");
    const [, water] = layoutField(props, wideSize).panels;
    for (const { parts } of bandsOf(props, water, props.scale).isolines)
      for (const line of parts.flatMap(({ lines }) => lines))
        expect(Math.max(...line.map(([, y]) => y)) - Math.min(...line.map(([, y]) => y))).toBeLessThan(0.5);
  });
  test("of the air run on from one bank to the next", () => {
    const props = picture("counter-cross-2", { NTU: 3, R: 1 });
    const [air] = layoutField(props, wideSize).panels;
    const border = air.core.x + air.core.w / 2;
    for (const { parts } of bandsOf(props, air, props.scale).isolines) {
      const [before, after] = parts.map(({ lines }) =>
        lines.flat().flatMap(([x, y]) => (Math.abs(x - border) < 0.01 ? [y] : [])),
      );
      if (!before?.length || !after?.length) continue;
      const gaps = before.map((y) => Math.min(...after.map((other) => Math.abs(other - y))));
      expect(Math.min(...gaps)).toBeLessThan(1);
    }
  });
});

describe("whichever way the hoses are", () => {
  const leaves = (id: keyof typeof layouts) => marksOf(picture(id, { NTU: 3, R: 1 }));
  test("the hot end is where the warmed water meets the entering air", () => {
    // Water last passes the bank that the air meets first, and leaves it at the bottom after an even number of passes.
    expect(leaves("counter-cross-2").hotEnd).toMatchObject({ bank: 0 });
    expect(leaves("counter-cross-2").hotEnd.y).toBeLessThan(0.1);
    expect(leaves("counter-cross-3").hotEnd.y).toBeGreaterThan(0.9);
    expect(leaves("counter-cross-2-crossover").hotEnd.y).toBeGreaterThan(0.9);
    for (const id of ["counter-cross-2", "counter-cross-3", "counter-cross-4"] as const)
      expect(leaves(id).hotEnd.x).toBeLessThan(0.1);
  });
  test("air leaves coolest where it meets the entering water last", () => {
    for (const id of ["counter-cross-2", "counter-cross-3", "counter-cross-2-rows", "cross-unmixed"] as const)
      expect(leaves(id).coolest.y).toBeLessThan(0.1);
    expect(leaves("face-split").coolest.y).toBeLessThan(0.1);
  });
  test("swapped hoses leave the air hotter", () => {
    expect(leaves("parallel-cross-2").airOut).toBeGreaterThan(leaves("counter-cross-2").airOut + 10);
  });
  describe.each([1.6, 5])("at NTU = %d", (NTU) => {
    test.each([0.1, 0.5])("and R = %d, streams along each other have it at their ends", (R) => {
      const hotEnd = (id: keyof typeof layouts) => {
        const props = picture(id, { NTU, R });
        const { x, air, water } = marksOf(props).hotEnd;
        const share = (T: number) => (T - props.cold) / (props.hot - props.cold);
        return { x, air: share(air), water: share(water) };
      };
      // P of counterflow as textbooks have it, from memory; its water leaves at R P.
      const stays = Math.exp(-NTU * (1 - R));
      const P = (1 - stays) / (1 - R * stays);
      const against = hotEnd("counterflow");
      expect([against.x, against.air]).toEqual([0, 1]);
      expect(Math.abs(against.water - R * P)).toBeLessThan(0.001);
      expect(hotEnd("parallel-flow")).toEqual({ x: 0, air: 1, water: 0 });
    });
  });
  test("water of one channel is at its hot end what leaves, water of many is warmer there than its mean", () => {
    for (const id of ["counter-cross-2", "counter-cross-3", "cross-one-row"] as const) {
      const { hotEnd, waterOut } = leaves(id);
      expect([hotEnd.air, hotEnd.water]).toEqual([kelvin(160), waterOut]);
    }
    const { hotEnd, waterOut } = leaves("cross-unmixed");
    expect(hotEnd.air).toBe(kelvin(160));
    expect(hotEnd.water).toBeGreaterThan(waterOut + 10);
    // The water in the channel that the air meets first sees entering air all along: 1 - exp(-NTU R).
    expect((hotEnd.water - kelvin(24)) / 136).toBeCloseTo(1 - Math.exp(-3), 3);
  });
  test("streams along each other are as hot at every height", () => {
    const { hotEnd, isEven } = leaves("counterflow");
    expect([hotEnd.isWholeHeight, isEven, hotEnd.y]).toEqual([true, true, 0.5]);
    expect(describeField(picture("counterflow"), celsius.show)).toContain("is where the air enters: ");
  });
});

test("known leaving temperatures stand in place of those of the cells", () => {
  const props = { ...picture("counter-cross-2"), airOut: kelvin(51.94), waterOut: kelvin(68.02) };
  const sentence = describeField(props, props.show);
  expect(sentence).toContain("leaves at 51.9\u00a0°C on average");
  expect(sentence).toContain("leaves at 68.0\u00a0°C.");
  expect(texts(drawings(<FieldDrawing {...props} />)[0] ?? "").map(({ text }) => text)).toContain(
    "mean 51.9",
  );
});

test("the drawing has neither style attributes nor numbers that cannot be drawn, whatever the state", () => {
  fc.assert(
    fc.property(anyState, ({ id, ...state }) => {
      for (const svg of drawings(<FieldDrawing {...picture(id, state)} />)) {
        expect(broken(svg)).toBeUndefined();
        expect(svg).not.toMatch(/style/);
      }
    }),
    { numRuns: 60 },
  );
});

test("its labels stay apart and inside its width, whatever the state", () => {
  fc.assert(
    fc.property(anyState, ({ id, ...state }) => {
      drawings(<FieldDrawing {...picture(id, state)} />).forEach((svg, i) => {
        expect(collisions(svg)).toEqual([]);
        for (const { text, x, w } of texts(svg))
          expect([text, x >= 0, x + w <= (sizes[i]?.width ?? 0)]).toEqual([text, true, true]);
      });
    }),
    { numRuns: 60 },
  );
});

test("no text is under 13 px where it is shown", () => {
  const [wideSvg = "", narrowSvg = ""] = drawings(<FieldDrawing {...picture("counter-cross-2")} />);
  for (const { size } of texts(narrowSvg)) expect(size * (326 / 350)).toBeGreaterThanOrEqual(13);
  for (const { size } of texts(wideSvg)) expect(size * (696 / 800)).toBeGreaterThanOrEqual(13);
});
