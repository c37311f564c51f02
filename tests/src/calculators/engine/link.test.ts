import { describe, expect, test } from "vitest";
import { type Entries, type Surroundings, startEntries } from "../../../../src/calculators/engine/entry.ts";
import { isLink, writeLink } from "../../../../src/calculators/engine/link.ts";
import { readLink } from "../../../../src/calculators/engine/read-link.ts";
import { box } from "./box.ts";

const around: Surroundings = { system: "us", barometer: { value: 99e3, isExample: false } };
const barometerEntry = { typed: "99", example: 1e5, unit: "kPa", shown: "psi" };
const start = startEntries(box, "us");
const state: Entries = {
  choices: { lid: "shut", lock: "brass" },
  fields: { ...start.fields, V: { typed: "1.5 ft³; or so", example: 0.1, unit: "in3", shown: "L" } },
};
const link = writeLink([{ calculator: box, entries: state }], { ...around, barometerEntry });

// A link that was sent has to open for ever: this text may gain relatives, and may not change.
const frozen =
  "v=1&units=us&barometer=99;kPa;psi&box.m=~2;1&box.V=1.5+ft%C2%B3%3B+or+so;in3;L&box.lid=shut&box.lock=brass&box.T=~300;degF";

const short =
  "v=2&units=us&barometer=99;kPa;psi&box.V=1.5+ft%C2%B3%3B+or+so;in3;L&box.lid=shut&box.lock=brass";

test("a link is short: what stands as in the example is left out", () => expect(link).toBe(short));

test.each([frozen, short])("a link opens as it was made: %s", (written) => {
  const opened = readLink(`#${written}`, [box]);
  expect(opened).toMatchObject({ system: "us", unread: [], entries: { box: state } });
  expect(opened.barometer).toMatchObject({ typed: "99", unit: "kPa", shown: "psi" });
});

test("an anchor is no link", () => {
  expect(["#eq-2.4", "#sources", "", "#"].some(isLink)).toBe(false);
  expect(isLink(`#${frozen}`)).toBe(true);
});

describe("what cannot be read is said, and the example stands there", () => {
  const unreadOf = (hash: string) => readLink(hash, [box]).unread;

  test.each([
    ["v=9", /version 9/],
    ["units=furlongs", /unit system/],
    ["barometer=99;furlong", /barometer/],
    ["barometer=5;kPa", /barometer/],
    ["box.V=3;furlong", /Size/],
    ["box.V=3;L;L;L", /Size/],
    ["box.V=%E0%A4%A;L", /Size/],
    ["box.V=~NaN;L", /Size/],
    ["box.V=~-1;L", /Size/],
    [`box.V=${"9".repeat(201)};L`, /Size/],
    ["box.lid=ajar", /Lid/],
    ["box.nothing=1;L", /box\.nothing/],
    ["other.V=1;L", /other\.V/],
    ["box.p=1;kPa", /box\.p/],
    ["box.constructor=1", /box\.constructor/],
    [`box.V=${"1".repeat(70_000)}`, /too long/],
  ])("%s", (hash, says) => {
    const unread = unreadOf(hash);
    expect(unread).toHaveLength(1);
    expect(unread[0]).toMatch(says);
    expect(readLink(hash, [box]).entries["box"]?.fields["V"]?.example ?? 0.1).toBe(0.1);
  });

  test("parts of another calculator on the page are left to it", () => {
    expect(readLink("other.V=1;L", [box], ["other"]).unread).toEqual([]);
  });
});

test("a typed text that looks like an example stays typed", () => {
  const entries = {
    ...state,
    fields: { ...state.fields, V: { ...barometerEntry, typed: "~0.5", example: 0.1, unit: "L", shown: "L" } },
  };
  const again = readLink(writeLink([{ calculator: box, entries }], { ...around, barometerEntry }), [box]);
  expect(again.entries["box"]?.fields["V"]?.typed).toBe("~0.5");
});

test("half a character does not stop a link from being written", () => {
  const entries = {
    ...state,
    fields: { ...state.fields, V: { typed: "\ud800", example: 0.1, unit: "L", shown: "L" } },
  };
  expect(() => writeLink([{ calculator: box, entries }], { ...around, barometerEntry })).not.toThrow();
});

test("the barometer of a link can be kept", () => {
  const { barometer } = readLink(frozen, [box]);
  expect(JSON.parse(JSON.stringify(barometer))).toStrictEqual(barometer);
});
