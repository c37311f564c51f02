import fc from "fast-check";
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { layouts } from "../../../../calc/exchanger/layouts.ts";
import { describeRanking, Ranking } from "../../../../src/widgets/pictures/Ranking.tsx";
import {
  layoutRanking,
  narrowSize,
  ranked,
  wideSize,
} from "../../../../src/widgets/pictures/ranking-layout.ts";
import type { RankingProps } from "../../../../src/widgets/pictures/types.ts";
import { broken, collisions, drawings, texts } from "./svg.ts";

const ways: RankingProps = {
  title: "Air after the cooler",
  unit: "°C",
  best: "lowest",
  rows: [
    { label: "Hoses swapped", value: 66.3, number: "66.3", layout: layouts["parallel-cross-2"] },
    { label: "Counterflow", value: 48.4, number: "48.4", layout: layouts.counterflow },
    { label: "One shell", value: Number.NaN, number: "" },
    {
      label: "Counter-cross-flow, two passes, many channels each, mixed in the return header",
      value: 50.5,
      number: "50.5",
    },
  ],
};

const anyRanking = fc
  .array(
    fc.tuple(fc.oneof(fc.double({ min: -500, max: 1e4 }), fc.double()), fc.integer({ min: 1, max: 9 })),
    {
      minLength: 1,
      maxLength: 12,
    },
  )
  .map(
    (rows): RankingProps => ({
      title: "Any",
      unit: "kW",
      rows: rows.map(([value, words], i) => ({
        label: `${Array.from({ length: words }, () => "a long word").join(" ")} ${i}`,
        value,
        number: value.toPrecision(4),
      })),
    }),
  );

const rowsOf = (props: RankingProps) =>
  [...renderToString(<Ranking {...props} />).matchAll(/<th scope="row">([^<]*).*?<td>([^<]*)<\/td>/g)].map(
    ([, label, number]) => [label, number],
  );

test("the best stands first, highest or lowest", () => {
  expect(ranked(ways).map(({ number }) => number)).toEqual(["48.4", "50.5", "66.3"]);
  expect(ranked({ ...ways, best: "highest" }).map(({ number }) => number)).toEqual(["66.3", "50.5", "48.4"]);
});

test("equal values keep the order in which they are given", () => {
  const rows = ["a", "b", "c"].map((label) => ({ label, value: 1, number: "1" }));
  expect(ranked({ ...ways, rows }).map(({ label }) => label)).toEqual(["a", "b", "c"]);
  const rounded = rows.map((row, i) => ({ ...row, value: 300 - i * 1e-13 }));
  for (const best of ["highest", "lowest"] as const)
    expect(ranked({ ...ways, rows: rounded, best }).map(({ label }) => label)).toEqual(["a", "b", "c"]);
});

describe("dots", () => {
  test.each([wideSize, narrowSize])("stand where the axis says", (size) => {
    const { rows, ticks } = layoutRanking(ways, size);
    const [a, b] = ticks;
    if (!a || !b) throw new Error("fewer than two ticks");
    const read = (x: number) =>
      Number(a.text) + ((x - a.x) * (Number(b.text) - Number(a.text))) / (b.x - a.x);
    expect(rows.map(({ x }) => read(x).toFixed(6))).toEqual(["48.400000", "50.500000", "66.300000"]);
  });
  test("of one value stand in the middle", () => {
    const rows = [{ label: "a", value: 3, number: "3" }];
    const { left, right, rows: drawn } = layoutRanking({ ...ways, rows }, wideSize);
    expect(drawn[0]?.x).toBeCloseTo((left + right) / 2, 6);
  });
});

describe("the table", () => {
  test("has every name and number, the best first", () => {
    expect(rowsOf(ways)).toEqual([
      ["Counterflow", "48.4 °C"],
      ["Counter-cross-flow, two passes, many channels each, mixed in the return header", "50.5 °C"],
      ["Hoses swapped", "66.3 °C"],
    ]);
  });
  test("shows the hoses of those rows that have some", () => {
    const html = renderToString(<Ranking {...ways} />);
    expect(html.match(/class="picture hoses bare"/g)).toHaveLength(2);
    expect(html).toContain("water is dotted");
    const plain = ways.rows.map(({ label, value, number }) => ({ label, value, number }));
    expect(renderToString(<Ranking {...ways} rows={plain} />)).not.toContain("water is dotted");
  });
});

test("what has no value is left out, with a sentence", () => {
  const html = renderToString(<Ranking {...ways} note="All at one size." />);
  expect(html).toContain("Left out, since there is no value: One shell.");
  expect(html).toContain("All at one size.");
  expect(describeRanking(ways)).not.toContain("One shell");
  const none = ways.rows.map((row) => ({ ...row, value: Number.NaN }));
  expect(renderToString(<Ranking {...ways} rows={none} />)).not.toMatch(/<svg|<table/);
});

test("the sentence gives every name and number", () => {
  expect(describeRanking(ways)).toBe(
    "Air after the cooler. The best first: Counterflow, 48.4 °C; Counter-cross-flow, two passes, many channels each, " +
      "mixed in the return header, 50.5 °C; Hoses swapped, 66.3 °C.",
  );
  for (const svg of drawings(<Ranking {...ways} />).slice(0, 2))
    expect(svg).toContain(`aria-label="${describeRanking(ways)}"`);
});

test("the drawing prints every name and number", () => {
  for (const svg of drawings(<Ranking {...ways} />).slice(0, 2)) {
    const words = texts(svg).map(({ text }) => text);
    for (const { label, number } of ranked(ways)) {
      expect(words).toContain(number);
      for (const word of label.split(" ")) expect(words.join(" ")).toContain(word);
    }
    expect(words).toContain("°C");
  }
});

test("names, dots and numbers stand apart and inside the drawing, whatever the values", () => {
  fc.assert(
    fc.property(anyRanking, (props) => {
      drawings(<Ranking {...props} />).forEach((svg, i) => {
        const size = i ? narrowSize : wideSize;
        expect(broken(svg.replace(/aria-label="[^"]*"|>[^<]*</g, ""))).toBeUndefined();
        expect(svg).not.toMatch(/style/);
        expect(collisions(svg)).toEqual([]);
        const { height, rows } = layoutRanking(props, size);
        for (const { x, y, w, h } of texts(svg)) {
          expect(x).toBeGreaterThanOrEqual(-0.05);
          expect(x + w).toBeLessThanOrEqual(size.width + 0.05);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y + h).toBeLessThanOrEqual(height);
        }
        const ends = texts(svg).filter(({ text }) => rows.some(({ number }) => number === text));
        for (const { x, y } of rows) {
          const number = ends.find((end) => Math.abs(end.y + end.h / 2 - y) < size.font / 2);
          if (number) expect(x + 6).toBeLessThan(number.x + 1);
        }
      });
    }),
  );
});

test("the row that is chosen stands out in the drawing, the table and the sentence", () => {
  const marked: RankingProps = {
    ...ways,
    rows: ways.rows.map((row) => ({ ...row, isChosen: row.label === "Counterflow" })),
  };
  const html = renderToString(<Ranking {...marked} />);
  expect(html).toContain("<b>Counterflow, chosen</b>");
  expect(html.match(/class="state"/g)).toHaveLength(2);
  expect(describeRanking(marked)).toContain("Counterflow, the one chosen, 48.4");
  expect(renderToString(<Ranking {...ways} />)).not.toContain("chosen");
});
