import { expect, test } from "vitest";
import { isShown } from "../../../../src/calculators/engine/shown.ts";
import { box } from "./box.ts";

test("without a condition a thing is always shown", () => expect(isShown(box, undefined, {})).toBe(true));

test("a condition holds when the choice is one of its options", () => {
  expect(isShown(box, { lid: ["shut"] }, { lid: "shut" })).toBe(true);
  expect(isShown(box, { lid: ["open", "shut"] }, { lid: "shut" })).toBe(true);
  expect(isShown(box, { lid: ["shut"] }, { lid: "open" })).toBe(false);
  expect(isShown(box, { lid: ["shut"] }, {})).toBe(false);
});

test("a choice that is hidden itself decides nothing", () => {
  expect(isShown(box, { lock: ["brass"] }, { lid: "shut", lock: "brass" })).toBe(true);
  expect(isShown(box, { lock: ["brass"] }, { lid: "open", lock: "brass" })).toBe(false);
});
