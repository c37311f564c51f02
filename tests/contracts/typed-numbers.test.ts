import { expect, test } from "vitest";
import { units } from "../../calc/quantity/units.ts";
import { parsePage, textsOf } from "./page.ts";
import { typedNumbers } from "./typed-numbers.ts";

// Of the other names of units those that are words, and what a reader takes for a unit besides. Without inches: behind a
// number, “in” is nearly always the preposition.
const words = Object.values(units).flatMap(({ names }) => names.filter((name) => /^[a-z]{4,}$/.test(name)));
const besides = ["times", "per cent", "kilowatts", "kilograms", "kilometres", "turns", "hours", "minutes"];
const unit = [...Object.values(units).map(({ label }) => label), ...words, ...besides]
  .filter((name) => name !== "" && name !== "in")
  .sort((a, b) => b.length - a.length)
  .map((name) => RegExp.escape(name))
  .join("|");
const number = String.raw`\d+(?:[.,\s]\d+)*`;
/** A number, or a row of them such as `10, 20 and 30`, with the unit behind it. */
const quantity = new RegExp(
  String.raw`(?<![\p{L}\d.])${number}(?:(?:,| to| and| or|–)\s?${number})*\s?(?:${unit})(?![\p{L}\d])`,
  "gu",
);

const quantitiesIn = (text: string) =>
  Array.from(text.matchAll(quantity), ({ 0: typed, index }) => ({ from: index, to: index + typed.length }));

/** Whether these words stand where that quantity does. */
const covers = (words: string, text: string, { from, to }: { from: number; to: number }) => {
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1))
    if (at <= from && to <= at + words.length) return true;
  return false;
};

/** Paragraphs by file. A computed number is a gap there, so that no unit behind it counts as typed. */
const texts = new Map(
  Object.entries(
    import.meta.glob<string>("/content/**/*.mdx", { eager: true, query: "?raw", import: "default" }),
  ).map(([path, source]) => [
    path.slice(1),
    textsOf(parsePage(source), "…").map((text) => text.replaceAll(/\s+/g, " ")),
  ]),
);

test("quantities are found by their units", () => {
  const found = (text: string) => quantitiesIn(text).map(({ from, to }) => text.slice(from, to));
  expect(found("at 1.3 kg/s, 20 °C and 90°, with 10, 20 and 30 % blocked")).toEqual([
    "1.3 kg/s",
    "20 °C",
    "90°",
    "10, 20 and 30 %",
  ]);
  expect(found("4.5 to 6.5 kg/h, 1\u00a0000 Pa, 3 times, 20 kelvin")).toEqual([
    "4.5 to 6.5 kg/h",
    "1\u00a0000 Pa",
    "3 times",
    "20 kelvin",
  ]);
  expect(found("figure 2.3.1 shows a ratio of 2 in 3 cases, station 1, … kPa")).toEqual([]);
});

test.each([...texts])(
  "in %s numbers with a unit are computed, or it is known why they are typed",
  (file, text) => {
    const explained = Object.keys(typedNumbers[file] ?? {});
    const unexplained = text.flatMap((paragraph) =>
      quantitiesIn(paragraph)
        .filter((where) => !explained.some((words) => covers(words, paragraph, where)))
        .map(({ from, to }) => paragraph.slice(Math.max(0, from - 30), to + 20)),
    );
    expect(unexplained).toEqual([]);
  },
);

test("what is explained is still there, and what is common practice says so", () => {
  const stale = Object.entries(typedNumbers).flatMap(([file, entries]) =>
    Object.entries(entries)
      .filter(([words, why]) => {
        const here = texts
          .get(file)
          ?.filter((text) => quantitiesIn(text).some((where) => covers(words, text, where)));
        return !here?.length || (why === "common practice" && !here.every((text) => /common/i.test(text)));
      })
      .map(([words]) => `${file}: ${words}`),
  );
  expect(stale).toEqual([]);
});
