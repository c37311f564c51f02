import { describe, expect, test } from "vitest";
import { DomainError } from "../../../../calc/quantity/domain-error.ts";
import { isChoice } from "../../../../src/calculators/engine/calculator.ts";
import { atFirstLine, pointInputs, pointsFrom } from "../../../../src/calculators/parts/points.ts";

const column = { symbol: "y_v", kind: "ratio", limits: [0, 100] } as const;
const inputs = pointInputs({
  count: "lines",
  label: "Lines",
  line: "line",
  from: "three",
  to: "five",
  start: "four",
  when: { own: ["table"] },
  x: { ...column, id: "y", label: "Position", starts: [0, 1, 2, 3, 4], help: "Turns." },
  y: { ...column, id: "u", label: "Flow", starts: [0, 2, 5, 8, 9] },
});

describe("fields for the lines of a table", () => {
  test("stand by line, with a choice of how many before them", () => {
    expect(Object.keys(inputs)).toEqual(["lines", ...[1, 2, 3, 4, 5].flatMap((i) => [`y_${i}`, `u_${i}`])]);
    const { lines, u_2 } = inputs;
    expect(isChoice(lines) && Object.keys(lines.options)).toEqual(["three", "four", "five"]);
    expect(u_2).toMatchObject({ label: "Flow, line 2", start: 2 });
  });

  test("are in sight as the count says, and with what brings the table", () => {
    expect(inputs.y_3.when).toEqual({ own: ["table"] });
    expect(inputs.y_4.when).toEqual({ own: ["table"], lines: ["four", "five"] });
    expect(inputs.u_5.when).toEqual({ own: ["table"], lines: ["five"] });
  });

  test("give the lines that are in sight, and no others", () => {
    const given = { y_1: 0, u_1: 0, y_2: 1, u_2: 4, y_3: 2, u_3: 9, lines: "three" };
    expect(pointsFrom(given, "y", "u")).toEqual([
      [0, 0],
      [1, 4],
      [2, 9],
    ]);
    expect(pointsFrom({}, "y", "u")).toEqual([]);
  });

  test("what a model refuses of the table stands at its first line", () => {
    const refuses = (field: string) => () =>
      atFirstLine({ table: "u_1" }, () => {
        throw new DomainError(field, "No.");
      });
    expect(refuses("table")).toThrow(expect.objectContaining({ field: "u_1", message: "No." }));
    expect(refuses("x_v")).toThrow(expect.objectContaining({ field: "x_v" }));
  });
});
