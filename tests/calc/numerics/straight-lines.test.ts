import { expect, test } from "vitest";
import { onStraightLines, type Points } from "../../../calc/numerics/straight-lines.ts";

const points: Points = [
  [0, 2],
  [1, 4],
  [3, 5],
];

test("meets every point, and lies half way half way", () => {
  for (const [x, y] of points) expect(onStraightLines(points, x)).toBe(y);
  expect(onStraightLines(points, 0.5)).toBe(3);
  expect(onStraightLines(points, 2)).toBe(4.5);
});

test("has no height outside its points", () => {
  for (const x of [-0.1, 3.1, Number.NaN]) expect(() => onStraightLines(points, x)).toThrow(RangeError);
});
