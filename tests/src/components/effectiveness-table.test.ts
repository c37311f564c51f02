import { describe, expect, test } from "vitest";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";
import { arrangementsInOrder, families, otherWordsFor } from "../../../src/components/arrangements.ts";
import {
  csvOf,
  curveOf,
  filed,
  fourDecimals,
  part,
  printed,
  tableOf,
} from "../../../src/components/effectiveness-table.ts";

describe("what is filed", () => {
  test("runs from 0, rises, and holds all that is printed", () => {
    for (const [marks, shown] of [
      [filed.NTU, printed.NTU],
      [filed.R, printed.R],
    ] as const) {
      expect(marks[0]).toBe(0);
      expect(marks.every((mark, i) => i === 0 || mark > (marks[i - 1] ?? 0))).toBe(true);
      expect(shown.filter((mark) => !marks.includes(mark))).toEqual([]);
    }
    expect([filed.NTU.at(-1), filed.R.at(-1)]).toEqual([10, 4]);
  });
});

describe.each(arrangements.map((arrangement) => [arrangement.id, arrangement] as const))(
  "%s",
  (_, arrangement) => {
    const { effectiveness, peaks, layout } = arrangement;
    const table = tableOf(arrangement);

    test("each number is its relation's", () => {
      const { NTU, R, P } = part(table, printed);
      NTU.forEach((ntu, row) => {
        R.forEach((r, column) => {
          expect(P[row]?.[column]).toBe(effectiveness.compute({ NTU: ntu, R: r }));
        });
      });
    });

    test("the first row is 0, and no number is impossible", () => {
      expect(table.P[0]?.every((P) => P === 0)).toBe(true);
      table.P.forEach((row) => {
        row.forEach((P, column) => {
          // Neither stream can change by more than the water and the air differ at their inlets.
          expect(P).toBeGreaterThanOrEqual(0);
          expect(Math.max(P, P * (table.R[column] ?? 0))).toBeLessThanOrEqual(1 + 1e-9);
        });
      });
    });

    // Shah and Sekulić 2003, chapter 3, from memory: with one stream at one temperature every arrangement is alike.
    test("with R = 0 it is 1 − exp(−NTU)", () => {
      table.P.forEach((row, i) => {
        expect(row[0]).toBeCloseTo(1 - Math.exp(-(table.NTU[i] ?? 0)), 7);
      });
    });

    // So the chart may say that its curves stand in the order of their labels.
    test("more R never means more P", () => {
      for (const row of table.P)
        row.forEach((P, i) => {
          expect(P).toBeLessThanOrEqual((row[i - 1] ?? 1) + 1e-9);
        });
    });

    test("P falls with NTU somewhere if it is said to peak, and nowhere if not", () => {
      const falls = table.P.some((row, i) =>
        row.some((P, column) => P < (table.P[i - 1]?.[column] ?? 0) - 1e-9),
      );
      expect(falls).toBe(peaks);
    });

    test("its file reads back as the table", () => {
      const lines = csvOf(table).split("\r\n");
      expect(lines.pop()).toBe("");
      const [names = "", ...rows] = lines;
      expect(names.split(",")).toEqual(["NTU", ...table.R.map((R) => `P(R=${R})`)]);
      const read = rows.map((row) => row.split(",").map(Number));
      expect(read.map(([NTU]) => NTU)).toEqual(table.NTU);
      read.forEach(([, ...values], i) => {
        expect(values).toHaveLength(table.R.length);
        values.forEach((value, column) => {
          expect(Math.abs(value - (table.P[i]?.[column] ?? Number.NaN))).toBeLessThanOrEqual(0.5000001e-6);
        });
      });
    });

    test("has words to be found by", () => {
      expect(otherWordsFor(layout).length).toBeGreaterThan(2);
    });
  },
);

// Shah and Sekulić 2003, chapter 3, from memory: NTU/(1 + NTU) in counterflow with R = 1, (1 − exp(−2 NTU))/2 in parallel flow.
test.each([
  ["counterflow", (NTU: number) => NTU / (1 + NTU)],
  ["parallel-flow", (NTU: number) => (1 - Math.exp(-2 * NTU)) / 2],
])("the printed column of R = 1 in %s", (id, expected) => {
  const arrangement = arrangements.find((one) => one.id === id);
  if (!arrangement) throw new Error(id);
  const { NTU, P } = part(tableOf(arrangement), { NTU: printed.NTU, R: [1] });
  expect(P.map(([one = Number.NaN]) => fourDecimals(one))).toEqual(
    NTU.map((one) => expected(one).toFixed(4)),
  );
});

test("a curve runs from 0 to its end", () => {
  const [first] = arrangements;
  if (!first) throw new Error("there is no arrangement");
  const curve = curveOf(tableOf(first), 1, 8);
  expect(curve[0]).toEqual([0, 0]);
  expect(curve.at(-1)?.[0]).toBe(8);
});

test("a row that is not filed is refused", () => {
  const [first] = arrangements;
  if (!first) throw new Error("there is no arrangement");
  expect(() => part(tableOf(first), { NTU: [0.33], R: [1] })).toThrow("no NTU of 0.33");
});

test("a family says once what all of its members begin with", () => {
  for (const { says, members } of families)
    for (const member of members) expect(member.says.startsWith(says)).toBe(true);
  const swapped = families.find(({ title }) => title.endsWith("swapped"));
  expect(swapped?.says).toMatch(/wrong way round.*[.]$/);
});

test("every arrangement stands in one family", () => {
  expect(arrangementsInOrder.map(({ id }) => id).sort()).toEqual(arrangements.map(({ id }) => id).sort());
  expect(families.map(({ title }) => title)).toEqual([
    "One direction",
    "Cross-flow, one pass",
    "Cross-flow, two passes and more",
    "Cross-flow, two passes and more, the hoses swapped",
    "Tubes in shells",
  ]);
});
