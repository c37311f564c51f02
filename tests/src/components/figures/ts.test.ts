import { describe, expect, test } from "vitest";
import { compressorOutlet } from "../../../../calc/compression/compressor-outlet.ts";
import { describeTs, layoutTs, narrowSize, wideSize } from "../../../../src/components/figures/ts-layout.ts";
import { entropyAbove, idealEnd, isobar, type State } from "../../../../src/components/figures/ts-path.ts";
import { meet } from "../../../../src/widgets/pictures/boxes.ts";

/** Gas constant of dry air from the molar masses and fractions of its four gases, J/(kg K). */
const R = 287.0432;

const one: State = { p: 100e3, T: 298.15 };
const places = [
  one,
  { p: 136.44e3, T: 344.21 },
  { p: 130.44e3, T: 311.36 },
  { p: 427e3, T: 474.93 },
  { p: 420e3, T: 328.92 },
] as const;
const stages = {
  places,
  alone: { p: 427e3, T: 497.56 },
  pressures: ["100 kPa", "136 kPa", "427 kPa"],
  temperatures: ["25.0 °C", "71.1 °C", "38.2 °C", "202 °C", "55.8 °C"],
  aloneAt: "224 °C",
} as const;

test("curves of one pressure are one curve, moved by the logarithm of their pressures", () => {
  const low = isobar(one, 100e3, 280, 500);
  const high = isobar(one, 400e3, 280, 500);
  low.forEach(({ s }, i) => {
    expect(s - (high[i]?.s ?? 0)).toBeCloseTo(R * Math.log(4), 2);
  });
});

test("an ideal compressor goes straight up, to where the calculator says", () => {
  const end = idealEnd(one, one, 250e3);
  expect(end.s).toBeCloseTo(0, 9);
  expect(entropyAbove(one, { p: 250e3, T: end.T })).toBeCloseTo(0, 6);
  const { T_s, T_out } = compressorOutlet({
    p_in: 100e3,
    T_in: 298.15,
    boost: "ratio",
    r: 2.5,
    efficiency: "isentropic",
    eta_s: 0.7,
    heatCapacity: "real",
    m_a: 1,
  });
  expect(end.T).toBeCloseTo(T_s, 6);
  expect(entropyAbove(one, { p: 250e3, T: T_out })).toBeGreaterThan(0);
});

describe.each([wideSize, narrowSize])("a diagram of $width px", (size) => {
  const layout = layoutTs(stages, size);

  test("is straight in temperature and entropy", () => {
    const { points, spots } = layout;
    const slope = (of: "s" | "T", axis: 0 | 1, a: number, b: number) =>
      ((spots[a]?.[axis] ?? 0) - (spots[b]?.[axis] ?? 0)) / ((points[a]?.[of] ?? 0) - (points[b]?.[of] ?? 0));
    expect(slope("s", 0, 4, 0)).toBeCloseTo(slope("s", 0, 3, 0), 9);
    expect(slope("T", 1, 4, 0)).toBeCloseTo(slope("T", 1, 3, 0), 9);
  });

  test("no compressor loses entropy, both coolers do", () => {
    const [a, b, c, d, e] = layout.points.map(({ s }) => s);
    expect(b).toBeGreaterThan(a as number);
    expect(c).toBeLessThan(b as number);
    expect(d).toBeGreaterThan(c as number);
    expect(e).toBeLessThan(d as number);
  });

  test("keeps its words apart and inside the picture", () => {
    const { texts } = layout;
    const pairs = texts.flatMap((a, i) => texts.slice(i + 1).map((b) => [a, b] as const));
    expect(pairs.filter(([a, b]) => meet(a, b)).map(([a, b]) => `${a.words} | ${b.words}`)).toEqual([]);
    for (const text of texts) {
      expect(text.x).toBeGreaterThanOrEqual(0);
      expect(text.x + text.w).toBeLessThanOrEqual(size.width);
      expect(text.y + text.h).toBeLessThanOrEqual(size.height);
    }
  });
});

test("its sentence follows the air", () => {
  const said = describeTs(stages);
  for (const s of [entropyAbove(one, places[1]), entropyAbove(places[2], places[3])])
    expect(said).toContain(`${Math.round(s)} J/(kg·K)`);
  expect(said).toContain("to 202 °C at 427 kPa");
  expect(said).toContain("One compressor alone would end at 224 °C");
});
