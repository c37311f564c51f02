import fc from "fast-check";
import renderToString from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { exampleEntry as barometer } from "../../src/calculators/engine/barometer.ts";
import { type Input, isChoice } from "../../src/calculators/engine/calculator.ts";
import { startEntries } from "../../src/calculators/engine/entry.ts";
import { evaluate, tryModel } from "../../src/calculators/engine/evaluate.ts";
import { writeLink } from "../../src/calculators/engine/link.ts";
import { narrow } from "../../src/calculators/engine/narrow.ts";
import { readLink } from "../../src/calculators/engine/read-link.ts";
import { isShown } from "../../src/calculators/engine/shown.ts";
import { widened } from "../../src/calculators/engine/widen.ts";
import { QuickSheet } from "../../src/widgets/quick-sheet.tsx";
import {
  anyText,
  around,
  entriesOf,
  exampleEntry,
  fieldsOf,
  metric,
  numRuns,
  startWith,
  typedEntry,
  waysOf,
} from "./every-calculator.ts";
import { quickAnswers } from "./every-quick.ts";
import { textsOf, wordsOf } from "./page.ts";

/** The same but for the last bits: what cancels in a formula cancels in decimals only nearly. */
const isSame = (a: number | undefined, b: number | undefined): boolean =>
  a === b || Math.abs((a ?? Number.NaN) - (b ?? Number.NaN)) <= 1e-12 * Math.abs(b ?? 0);

test("there are ten of them, each at a place of its own", () => {
  expect(quickAnswers).toHaveLength(10);
  expect(new Set(quickAnswers.map(({ order }) => order)).size).toBe(quickAnswers.length);
});

describe.each(quickAnswers)("$id", ({ calculator: whole, view, symbol, synonyms, page }) => {
  const calculator = narrow(whole, view);
  const ways = waysOf(calculator);
  const inSight = <T extends { readonly when?: Parameters<typeof isShown>[1] }>(
    all: Readonly<Record<string, T>>,
    choices: (typeof ways)[number],
  ) => Object.entries(all).filter(([, one]) => isShown(calculator, one.when, choices));

  test("names only what its calculator has", () => {
    for (const [id, option] of Object.entries(view.choices)) {
      const choice = whole.inputs[id];
      expect(choice && isChoice(choice) ? Object.keys(choice.options) : [], id).toContain(option);
      expect(view.fields).not.toContain(id);
    }
    for (const [id, shown] of Object.entries(view.same)) {
      expect(whole.inputs).toHaveProperty(id);
      expect(view.fields).not.toContain(id);
      expect(view.fields).toContain(shown);
    }
    for (const [id, words] of Object.entries(view.options)) {
      const choice = whole.inputs[id];
      const known = choice && isChoice(choice) ? Object.keys(choice.options) : [];
      expect(Object.keys(words).filter((option) => !known.includes(option))).toEqual([]);
    }
    const named = [...view.fields, ...view.results];
    expect(Object.keys(view.labels).filter((id) => !named.includes(id))).toEqual([]);
    expect(Object.keys(view.start).filter((id) => !Object.hasOwn(whole.inputs, id))).toEqual([]);
    expect(new Set(view.fields).size).toBe(view.fields.length);
    expect(new Set(view.results).size).toBe(view.results.length);
  });

  test("asks a question, is found by three other words, and says its matter briefly", () => {
    expect(view.asks).toMatch(/\?$/);
    expect(synonyms.length).toBeGreaterThanOrEqual(3);
    expect(new Set(synonyms).size).toBe(synonyms.length);
    const words = textsOf(page).flatMap(wordsOf);
    expect(words.length).toBeGreaterThan(15);
    expect(words.length).toBeLessThan(130);
  });

  test("asks for at most eight things at a time, and has at most four results, the answer first", () => {
    for (const choices of ways) {
      expect(inSight(calculator.inputs, choices).length).toBeLessThanOrEqual(8);
      expect(inSight(calculator.results, choices).length).toBeLessThanOrEqual(4);
      const answer = inSight(calculator.results, choices)[0]?.[0] ?? "";
      const { outcome, messages, trouble } = evaluate(calculator, startWith(calculator, choices), metric);
      expect(outcome?.values[answer], JSON.stringify({ choices, messages, trouble })).toBeTypeOf("number");
      // What stands behind a question raises no remark of its own.
      expect(outcome?.notes).toEqual([]);
    }
    const [first] = inSight(calculator.results, startEntries(calculator, "metric").choices);
    expect(first?.[1].symbol).toBe(symbol);
  });

  test("its answer stands in the page before any script runs", () => {
    const html = renderToString(<QuickSheet calculator={whole} view={view} />);
    const [answer] = inSight(calculator.results, startEntries(calculator, "metric").choices);
    expect(html).toMatch(new RegExp(`data-result="${answer?.[0]}"[^>]*>−?\\d`));
    expect(html.replace(/<[^>]*>/g, " ")).not.toMatch(/\b(NaN|Infinity|undefined|null)\b/);
  });

  const hidden = fieldsOf(whole).filter(([id]) => !view.fields.includes(id) && !Object.hasOwn(view.same, id));

  test.runIf(hidden.length > 0).each(hidden)("the hidden %s decides nothing that is shown", (id, field) => {
    const values = fc.oneof(
      fc.constantFrom(...field.limits),
      fc.double({ min: field.limits[0], max: field.limits[1], noNaN: true }),
    );
    let compared = 0;
    fc.assert(
      fc.property(entriesOf(calculator, exampleEntry), values, (entries, value) => {
        const { given, outcome } = evaluate(calculator, entries, metric);
        if (!outcome) return;
        const other = tryModel(narrow(whole, { ...view, start: { ...view.start, [id]: value } }), given, {});
        // A value that the calculator refuses beside these is not one that could stand there.
        if (!other) return;
        compared += 1;
        for (const [result] of inSight(calculator.results, entries.choices))
          expect([result, isSame(other[result], outcome.values[result])]).toEqual([result, true]);
      }),
      { numRuns },
    );
    expect(compared).toBeGreaterThan(numRuns / 20);
  });

  test("any state gives numbers, or a sentence at a field that is on the screen", () => {
    const entryOf = (field: Parameters<typeof exampleEntry>[0]) =>
      fc.oneof(
        { weight: 8, arbitrary: exampleEntry(field) },
        { weight: 1, arbitrary: typedEntry(field, anyText) },
      );
    fc.assert(
      fc.property(entriesOf(calculator, entryOf), around, (entries, surroundings) => {
        const { outcome, messages, trouble } = evaluate(calculator, entries, surroundings);
        expect(trouble).toBeNull();
        const refusals = Object.values(messages)
          .flat()
          .filter(({ tone }) => tone === "invalid");
        if (!outcome) expect(refusals).not.toEqual([]);
        for (const { says } of refusals) expect(says).toMatch(/^\S[\s\S]+\.$/);
        for (const [id] of inSight(calculator.results, entries.choices))
          if (outcome?.values[id] !== undefined) expect(outcome.values[id]).toSatisfy(Number.isFinite);
      }),
      { numRuns },
    );
  });

  test("the calculator itself opens with the same numbers", () => {
    fc.assert(
      fc.property(entriesOf(calculator, exampleEntry), (entries) => {
        const here = evaluate(calculator, entries, metric);
        const link = writeLink([{ calculator: whole, entries: widened(whole, view, entries, "metric") }], {
          ...metric,
          barometerEntry: barometer("metric"),
        });
        const opened = readLink(`#${link}`, [whole]);
        expect(opened.unread).toEqual([]);
        const state = opened.entries[whole.id];
        const there = evaluate(whole, state ?? startEntries(whole, "metric"), metric);
        if (!here.outcome) return;
        expect(there.outcome).not.toBeNull();
        for (const [id] of inSight(calculator.results, entries.choices))
          expect([id, isSame(there.outcome?.values[id], here.outcome.values[id])]).toEqual([id, true]);
      }),
      { numRuns },
    );
  });

  test("a unit chosen for a result in sight stands in the link", () => {
    const start = startEntries(calculator, "metric");
    for (const [id, { kind, when }] of Object.entries(calculator.results)) {
      const units = { [id]: { pressure: "psi-g", temperature: "degF" }[kind as string] ?? "1" };
      const entries = { ...start, units };
      const link = writeLink([{ calculator, entries }], { ...metric, barometerEntry: barometer("metric") });
      const opened = readLink(`#${link}`, [calculator]);
      const isSeen = isShown(calculator, when, start.choices);
      const isKnown = units[id] !== "1" || kind === "ratio" || kind === "fraction";
      expect(opened.unread).toHaveLength(isSeen && !isKnown ? 1 : 0);
      expect(opened.entries[calculator.id]?.units).toEqual(isSeen && isKnown ? units : undefined);
    }
  });

  test("a link carries what is in sight, examples too, and a draft all of it", () => {
    const around = { ...metric, barometerEntry: barometer("metric") };
    const start = startEntries(calculator, "metric");
    for (const choices of ways) {
      const states = [{ calculator, entries: { ...start, choices } }];
      const idsIn = (link: string) =>
        link
          .split("&")
          .slice(3)
          .map((part) => part.slice(calculator.id.length + 1, part.indexOf("=")));
      const isBarometer = (input: Input) => !isChoice(input) && input.barometer === true;
      const own = Object.entries(calculator.inputs).filter(([, input]) => !isBarometer(input));
      expect(idsIn(writeLink(states, around))).toEqual(
        own.filter(([, { when }]) => isShown(calculator, when, choices)).map(([id]) => id),
      );
      expect(idsIn(writeLink(states, around, { isDraft: true }))).toEqual(own.map(([id]) => id));
    }
  });
});
