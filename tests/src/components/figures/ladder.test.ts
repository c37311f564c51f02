import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  describeLadder,
  type Ladder,
  layoutLadder,
  narrowSize,
  wideSize,
} from "../../../../src/components/figures/ladder-layout.ts";
import { meet } from "../../../../src/widgets/pictures/boxes.ts";

const ladder = (p0: number, filter: number, ratio: number, cooler: number): Ladder => {
  const [p1, p2] = [p0 - filter, (p0 - filter) * ratio];
  const rung = (label: string, pressure: number) => ({ label, pressure, text: `${pressure.toFixed(0)} kPa` });
  const loss = (label: string, before: number, size: number) =>
    size > 0 ? [{ label, before, text: `−${size.toFixed(1)} kPa` }] : [];
  return {
    rungs: [rung("barometer", p0), rung("inlet", p1), rung("outlet", p2), rung("manifold", p2 - cooler)],
    losses: [...loss("filter", 1, filter), ...loss("cooler", 3, cooler)],
    compressor: { inlet: 1, outlet: 2, ratio: ratio.toFixed(2) },
    gauge: `${(p2 - cooler - p0).toFixed(0)} kPa`,
    unit: "kPa",
    other: { unit: "psi", size: 6.894757 },
  };
};

const anyLadder = fc
  .tuple(
    fc.double({ min: 60, max: 110, noNaN: true }),
    fc.double({ min: 0, max: 6, noNaN: true }),
    fc.double({ min: 1.6, max: 4.5, noNaN: true }),
    fc.double({ min: 0, max: 12, noNaN: true }),
  )
  .map(([p0, filter, ratio, cooler]) =>
    ladder(p0, filter < 0.1 ? 0 : filter, ratio, cooler < 0.1 ? 0 : cooler),
  );

describe.each([wideSize, narrowSize])("a ladder of $width px", (size) => {
  test("stands to scale on empty space", () => {
    fc.assert(
      fc.property(anyLadder, (of) => {
        const { steps, foot } = layoutLadder(of, size);
        const perKilopascal = steps.map(({ y }, i) => (foot - y) / (of.rungs[i]?.pressure ?? 0));
        for (const scale of perKilopascal) expect(scale).toBeCloseTo(perKilopascal[0] ?? 0, 9);
      }),
    );
  });

  test("measures the gauge from the barometer, and the ratio from the compressor's own inlet", () => {
    const { at, steps, barometer, foot } = layoutLadder(ladder(100, 4, 2.3, 6), size);
    expect(at.gauge).toMatchObject({ from: barometer, to: steps[3]?.y });
    expect(at.absolute).toMatchObject({ from: foot, to: steps[3]?.y });
    expect(at.ratio).toMatchObject({ from: steps[1]?.y, to: steps[2]?.y });
    expect(steps[1]?.y).toBeGreaterThan(barometer);
  });

  test("keeps its words apart and inside the picture", () => {
    fc.assert(
      fc.property(anyLadder, (of) => {
        const { texts, height } = layoutLadder(of, size);
        for (const text of texts) {
          expect(text.x).toBeGreaterThanOrEqual(-0.5);
          expect(text.x + text.w).toBeLessThanOrEqual(size.width + 0.5);
          expect(text.y).toBeGreaterThanOrEqual(-0.5);
          expect(text.y + text.h).toBeLessThanOrEqual(height);
        }
        const pairs = texts.flatMap((a, i) => texts.slice(i + 1).map((b) => [a, b] as const));
        const met = pairs.filter(([a, b]) => meet(a, b)).map(([a, b]) => `${a.words} | ${b.words}`);
        expect(met).toEqual([]);
      }),
    );
  });
});

test("its sentence has the numbers of the drawing", () => {
  expect(describeLadder(ladder(100, 4, 2.5, 6))).toBe(
    "Pressures counted from empty space, inlet and outlet of the compressor: barometer 100 kPa, inlet 96 kPa, outlet " +
      "240 kPa, manifold 234 kPa. Filter takes 4.0 kPa, cooler takes 6.0 kPa. The compressor multiplies its inlet " +
      "pressure by 2.50. The gauge in the manifold counts from the barometer and shows 134 kPa.",
  );
});
