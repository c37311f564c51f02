import { expect, test } from "vitest";
import type { Field } from "../../../../src/calculators/engine/calculator.ts";
import {
  type Entry,
  entryText,
  inSystem,
  readEntry,
  type Surroundings,
  startEntries,
} from "../../../../src/calculators/engine/entry.ts";
import { box } from "./box.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };
const size = box.inputs["V"] as Field;
const barometer = box.inputs["p"] as Field;
const typed = (text: string, unit: string, shown = unit): Entry => ({
  typed: text,
  example: size.start,
  unit,
  shown,
});

test("starts with the example values and the first option of each choice", () => {
  const { fields, choices } = startEntries(box, "us");
  expect(choices).toEqual({ lid: "open", lock: "none" });
  expect(fields["V"]).toEqual({ typed: null, example: 0.1, unit: "in3", shown: "in3" });
});

test("what nobody has touched follows the unit system, what is one's own keeps its unit", () => {
  const start = startEntries(box, "metric");
  const own = { ...start, fields: { ...start.fields, V: typed("3", "cm3") } };
  const { fields } = inSystem(box, own, "us");
  expect(fields["V"]?.shown).toBe("cm3");
  expect(fields["p"]?.shown).toBe("psi");
});

test("an example reads as its value, a text as what it says", () => {
  expect(readEntry(size, { typed: null, example: 0.1, unit: "L", shown: "L" }, around)).toMatchObject({
    value: 0.1,
  });
  expect(readEntry(size, typed("3", "L"), around)).toMatchObject({ ok: true, value: 0.003 });
  expect(readEntry(size, typed("three", "L"), around)).toMatchObject({ ok: false });
});

test("gauge readings count from the barometer of the page", () => {
  const gauge: Entry = { typed: "0", example: 1e5, unit: "psi-g", shown: "psi-g" };
  const high: Surroundings = { ...around, barometer: { value: 8e4, isExample: false } };
  expect(readEntry(barometer, gauge, high)).toMatchObject({ value: 8e4 });
});

test("a change of unit and back gives the text that was typed", () => {
  expect(entryText(size, typed("3.30", "L"), around)).toBe("3.30");
  expect(entryText(size, typed("3.30", "L", "cm3"), around)).toBe("3300");
  expect(entryText(size, typed("rubbish", "L", "cm3"), around)).toBe("rubbish");
  expect(entryText(size, { typed: null, example: 0.1, unit: "L", shown: "L" }, around)).toBe("100");
});

test("an example in another unit is written to four figures, and counts in full", () => {
  const { fields } = startEntries(box, "us");
  const example = fields["V"] as Entry;
  expect(entryText(size, example, around)).toBe("6102");
  expect(readEntry(size, example, around)).toMatchObject({ value: size.start });
  const pound: Entry = { typed: null, example: 1e5, unit: "psi", shown: "psi" };
  expect(entryText(barometer, pound, around)).toBe("14.5");
  expect(entryText(barometer, { ...pound, typed: "14.504" }, around)).toBe("14.504");
  // Short by itself: nothing is rounded.
  expect(entryText(barometer, { ...pound, example: 101_325, shown: "kPa" }, around)).toBe("101.325");
});
