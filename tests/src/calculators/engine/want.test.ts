import { describe, expect, test } from "vitest";
import {
  type Entries,
  type Surroundings,
  startEntries,
  type Want,
} from "../../../../src/calculators/engine/entry.ts";
import { evaluate } from "../../../../src/calculators/engine/evaluate.ts";
import { writeLink } from "../../../../src/calculators/engine/link.ts";
import { readLink } from "../../../../src/calculators/engine/read-link.ts";
import { releasedBy } from "../../../../src/calculators/engine/release.ts";
import { isAsWanted, readWanted, withHeld } from "../../../../src/calculators/engine/want.ts";
import { box } from "./box.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };
const barometerEntry = { typed: null, example: 1e5, unit: "kPa", shown: "kPa" };
const start = startEntries(box, "metric");
const want: Want = {
  result: "rho",
  input: "m",
  typed: "20; or so",
  unit: "kg/m3",
  shown: "lb/ft3",
  isHeld: true,
};

const linkOf = (entries: Entries) => writeLink([{ calculator: box, entries }], { ...around, barometerEntry });

describe("a wanted result in a link", () => {
  test.each([
    [want, "box.want=rho;m;20%3B+or+so;kg/m3;lb/ft3;held"],
    [{ ...want, isHeld: false }, "box.want=rho;m;20%3B+or+so;kg/m3;lb/ft3"],
    [{ ...want, typed: "20", shown: "kg/m3" }, "box.want=rho;m;20;kg/m3;held"],
    [{ ...want, typed: "", shown: "kg/m3", isHeld: false }, "box.want=rho;m;;kg/m3"],
  ])("opens as it was", (one, text) => {
    const link = linkOf({ ...start, want: one });
    expect(link.split("&").at(-1)).toBe(text);
    const opened = readLink(link, [box]);
    expect(opened.unread).toEqual([]);
    expect(opened.entries["box"]?.want).toEqual(one);
  });

  test("is in none where nothing is wanted", () => expect(linkOf(start)).not.toContain("want"));

  test.each([
    "",
    "rho",
    "rho;m",
    "rho;m;20",
    "rho;m;20;furlong",
    "rho;m;20;held",
    "rho;m;~20;kg%2Fm3",
    "rho;p;20;kg%2Fm3",
    "rho;lid;20;kg%2Fm3",
    "constructor;m;20;kg%2Fm3",
    "rho;constructor;20;kg%2Fm3",
    "rho;m;%E0%A4%A;kg%2Fm3",
    `rho;m;${"9".repeat(201)};kg%2Fm3`,
    "rho;m;20;kg%2Fm3;kg%2Fm3;held;held",
  ])("that cannot be read is said: %s", (text) => {
    const { entries, unread } = readLink(`box.want=${text}`, [box]);
    expect(unread).toEqual(["What was to be found, by the link, could not be read."]);
    expect(entries["box"]?.want).toBeUndefined();
  });
});

describe("a field that is held", () => {
  const saysAtM = (one: Want) => {
    const entries = { ...start, want: one };
    const { messages } = withHeld(box, entries, evaluate(box, entries, around), around);
    return (messages["m"] ?? []).map(({ says }) => says);
  };

  test("says what it is found for, once the result is so", () => {
    expect(saysAtM({ ...want, typed: "20" })).toEqual(["Found so that “Density” is 20 kg/m³."]);
    expect(saysAtM({ ...want, typed: "21" })).toEqual(["Sought so that “Density” is 21 kg/m³."]);
    expect(saysAtM({ ...want, typed: "1.25 lb/ft3" })).toEqual(["Sought so that “Density” is 1.25 lb/ft3."]);
  });

  test("says nothing while it is not held, or nothing can be read", () => {
    expect(saysAtM({ ...want, typed: "20", isHeld: false })).toEqual([]);
    expect(saysAtM({ ...want, typed: "rubbish" })).toEqual([]);
  });

  test("is let go by typing into it, and by nothing else", () => {
    const entry = start.fields["m"];
    if (!entry) throw new Error("no entry");
    expect(releasedBy(want, "m", entry, { ...entry, typed: "3" }).isHeld).toBe(false);
    expect(releasedBy(want, "m", entry, { ...entry, shown: "percent" }).isHeld).toBe(true);
    expect(releasedBy(want, "V", start.fields["V"], { ...entry, typed: "3" }).isHeld).toBe(true);
  });
});

test("what is wanted is read like a field", () => {
  expect(readWanted(box, { ...want, typed: "1 lb/ft3" }, around)).toMatchObject({ ok: true });
  expect(readWanted(box, { ...want, typed: "1 kPa" }, around)).toMatchObject({ ok: false });
  expect(readWanted(box, { ...want, typed: "" }, around)).toMatchObject({ ok: false });
});

test("as wanted is to a millionth", () => {
  expect([2.000001, 2.00001, undefined].map((value) => isAsWanted(value, 2))).toEqual([true, false, false]);
});
