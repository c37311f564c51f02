import { describe, expect, test } from "vitest";
import { fromSI } from "../../../../calc/quantity/units.ts";
import { isShown } from "../../../../src/calculators/engine/shown.ts";
import { asCsv } from "../../../../src/widgets/exports/csv.ts";
import { asJson } from "../../../../src/widgets/exports/json.ts";
import { asPlain } from "../../../../src/widgets/exports/rows.ts";
import { fileName } from "../../../../src/widgets/exports/save.ts";
import { box } from "../../calculators/engine/box.ts";
import { link, states, workedAt } from "./every-state.ts";
import { parseCsv } from "./parse-csv.ts";

describe.each(states)("%s", (_, worked) => {
  const { calculator, outcome, entries, around } = worked;
  const inSight = <T extends { readonly when?: Parameters<typeof isShown>[1] }>(
    all: Readonly<Record<string, T>>,
  ) => Object.entries(all).filter(([, one]) => isShown(calculator, one.when, entries.choices));

  test("the table holds each input and each result in sight, in SI and as shown", () => {
    const [head, ...rows] = parseCsv(asCsv(worked, link));
    expect(head).toEqual(["part", "id", "label", "value", "unit", "SI value", "SI unit", "note"]);
    expect(rows.every((row) => row.length === head?.length)).toBe(true);
    const ids = (part: string) => rows.filter(([of]) => of === part).map(([, id]) => id);
    expect(ids("given").filter((id) => id !== "barometer")).toEqual(
      inSight(calculator.inputs).map(([id]) => id),
    );
    expect(ids("result")).toEqual(inSight(calculator.results).map(([id]) => id));
    for (const [part, id = "", , value = "", unit = "", si = "", , note] of rows) {
      if (part !== "result") continue;
      const result = outcome.values[id];
      if (result === undefined) {
        expect([value, si, note]).toEqual(["", "", "no meaning at this state"]);
        continue;
      }
      expect(Math.abs(Number(si) - result)).toBeLessThanOrEqual(1e-11 * Math.abs(result));
      const inUnit = fromSI(result, unit, { barometer: around.barometer.value });
      expect(Math.abs(Number(value) - inUnit), `${id} ${value} ${unit}`).toBeLessThanOrEqual(
        Math.max(0.051, 6e-4 * Math.abs(inUnit)),
      );
    }
    expect(rows.at(-1)?.[3]).toBe(link);
  });

  test("the JSON holds the same", () => {
    const read = JSON.parse(asJson(worked, link));
    expect(read).toMatchObject({
      calculator: calculator.id,
      link,
      linkVersion: 2,
      units: around.system,
      barometer: { SI: { value: 99_000, unit: "Pa" }, isExample: false },
    });
    expect(Object.keys(read.given)).toEqual(inSight(calculator.inputs).map(([id]) => id));
    for (const [id] of inSight(calculator.results)) {
      const result = outcome.values[id];
      if (result === undefined) expect(read.results[id].SI).toBeNull();
      else expect(read.results[id].SI.value).toBeCloseTo(result, 8 - Math.log10(Math.abs(result) + 1e-9));
    }
  });
});

describe("what somebody typed", () => {
  const typed = (text: string) => {
    const { calculator, entries, around } = workedAt(box, "metric");
    const V = { typed: text, example: 0.1, unit: "L", shown: "L" };
    return { calculator, entries: { ...entries, fields: { ...entries.fields, V } }, around, outcome: null };
  };

  test.each([
    ["=1+1", "'=1+1"],
    ["+cmd", "'+cmd"],
    ["-2+3", "'-2+3"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["\t=1", "'\t=1"],
    ['a "b", c', 'a "b", c'],
    ["two\r\nlines", "two\r\nlines"],
    ["<b>1</b>", "<b>1</b>"],
  ])("%j is a text in a table and in JSON, and says why it cannot be used", (text, cell) => {
    const rows = parseCsv(asCsv(typed(text), link));
    const row = rows.find(([, id]) => id === "V");
    // Some of these are calculations that can be read: then the number stands there.
    if (row?.[7]?.startsWith("cannot be used")) expect(row[3]).toBe(cell);
    else expect(Number(row?.[3])).not.toBeNaN();
    expect(rows.filter(([part]) => part === "result")).toEqual([]);
    const read = JSON.parse(asJson(typed(text), link));
    expect(read.given.V.typed).toBe(text);
    expect(read.results).toBeNull();
  });

  test("a negative number stays a number", () => {
    const [, value] = /,V,[^,]*,(-?[\d.]+),L/.exec(asCsv(typed("-0.5"), link)) ?? [];
    expect(value).toBe("-0.5");
  });
});

test("a written number as programs read it", () => {
  expect(["−1.500\u00a0×\u00a010⁻⁵", "12\u202f345", "0.74"].map(asPlain)).toEqual([
    "-1.500e-5",
    "12345",
    "0.74",
  ]);
});

test("a file is named by its calculator and the day", () => {
  expect(fileName("charge-path", "csv", new Date(2026, 2, 9, 23, 59))).toBe("charge-path-2026-03-09.csv");
});
