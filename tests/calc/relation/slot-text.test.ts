import { expect, test } from "vitest";
import { writeNumber } from "../../../calc/quantity/write.ts";
import { slotText } from "../../../calc/relation/slot-text.ts";

test.each([
  [-0.5, "plain", "−0.5"],
  [-0.5, "argument", "−0.5"],
  [-0.5, "lead", "−0.5"],
  [-0.5, "term", "(−0.5)"],
  [-0.5, "factor", "(−0.5)"],
  [-0.5, "base", "(−0.5)"],
  [0.5, "base", "0.5"],
  [2e-5, "factor", "2\u00a0×\u00a010⁻⁵"],
  [2e-5, "base", "(2\u00a0×\u00a010⁻⁵)"],
  [-2e7, "base", "(−2\u00a0×\u00a010⁷)"],
])("%d as %s is %s", (value, at, text) => {
  expect(slotText(writeNumber(value, 1), at)).toBe(text);
});
