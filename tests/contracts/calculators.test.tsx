import fc from "fast-check";
import renderToString from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { layouts } from "../../calc/exchanger/layouts.ts";
import { kinds } from "../../calc/quantity/kinds.ts";
import { symbols } from "../../calc/symbols.ts";
import { exampleEntry as exampleOfBarometer } from "../../src/calculators/engine/barometer.ts";
import { type Calculator, isChoice, type When } from "../../src/calculators/engine/calculator.ts";
import type { Entries } from "../../src/calculators/engine/entry.ts";
import { type Evaluation, evaluate, tryModel } from "../../src/calculators/engine/evaluate.ts";
import { writeLink } from "../../src/calculators/engine/link.ts";
import { readLink } from "../../src/calculators/engine/read-link.ts";
import { isShown } from "../../src/calculators/engine/shown.ts";
import { CalculatorSheet } from "../../src/widgets/calculator-sheet.tsx";
import { fetchDrawers } from "../../src/widgets/drawing.ts";
import { DrawnPicture, picturesFor } from "../../src/widgets/picture.tsx";
import {
  anyText,
  around,
  calculators,
  entriesOf,
  exampleEntry,
  fieldsOf,
  metric,
  numRuns,
  startWith,
  typedEntry,
  waysOf,
  wayToShow,
} from "./every-calculator.ts";

await fetchDrawers();

/** An id that was meant for a label: with a suffix, or a symbol as it is. */
const symbolic = new RegExp(`_|^(${Object.keys(symbols).join("|")})$`);

const notANumber = /\b(NaN|Infinity|undefined|null)\b|∞/;

/** A sentence of ours, without what it quotes from the visitor. */
const ownWords = (says: string): string => says.replace(/“[^”]*”/g, "“”");

function expectSentence(says: string): void {
  const own = ownWords(says);
  expect(own).toMatch(/^\S.+\S\.$/su);
  expect(own).not.toMatch(notANumber);
}

/** Numbers for every result that is shown, or a sentence that says why there are none. */
function expectNumbersOrSentence(calculator: Calculator, entries: Entries, evaluation: Evaluation): void {
  const told = Object.values(evaluation.messages).flat();
  for (const { says } of told) expectSentence(says);
  if (!evaluation.outcome) {
    const reasons = told.filter(({ tone }) => tone === "invalid").map(({ says }) => says);
    if (evaluation.trouble !== null) reasons.push(evaluation.trouble);
    expect(reasons).not.toEqual([]);
    for (const says of reasons) expectSentence(says);
    return;
  }
  for (const { about, says } of evaluation.outcome.notes) {
    expectSentence(says);
    // A page prints what a note is about: the label of an input or a result, else the words of a place.
    const isLabelled = Object.hasOwn(calculator.inputs, about) || Object.hasOwn(calculator.results, about);
    if (!isLabelled) expect(about).not.toMatch(symbolic);
  }
  const { values } = evaluation.outcome;
  const shown = Object.entries(calculator.results).filter(([, r]) =>
    isShown(calculator, r.when, entries.choices),
  );
  // What has no meaning at a state is left out, and the page says so in its row.
  const lost = shown.filter(([id]) => values[id] !== undefined && !Number.isFinite(values[id]));
  expect(lost.map(([id]) => id)).toEqual([]);
}

const relationsUsed = (evaluation: Evaluation): readonly string[] =>
  evaluation.outcome?.steps.map((step) => step.relation) ?? [];

test("there are calculators", () => expect(calculators.length).toBeGreaterThan(0));

describe.each(calculators)("$file", ({ file, calculator }) => {
  const ways = waysOf(calculator);
  const declared = calculator.relations.map(({ id }) => id);
  const conditions: readonly (When | undefined)[] = [
    ...Object.values(calculator.inputs),
    ...Object.values(calculator.results),
    ...(calculator.pictures ?? []),
    ...(calculator.also ?? []),
  ].map(({ when }) => when);

  test("is named as its file, and asks a question", () => {
    expect(calculator.id).toBe(file);
    expect(calculator.asks).toMatch(/\?$/);
  });

  test("its symbols and kinds exist", () => {
    const used = [...fieldsOf(calculator).map(([, field]) => field), ...Object.values(calculator.results)];
    expect(used.map(({ symbol }) => symbol).filter((symbol) => !Object.hasOwn(symbols, symbol))).toEqual([]);
    expect(used.map(({ kind }) => kind).filter((kind) => !Object.hasOwn(kinds, kind))).toEqual([]);
  });

  test("what is shown on a condition names choices and options that exist", () => {
    const unknown = conditions.flatMap((when) =>
      Object.entries(when ?? {}).flatMap(([id, options]) => {
        const choice = calculator.inputs[id];
        if (!choice || !isChoice(choice)) return [id];
        return options.filter((option) => !Object.hasOwn(choice.options, option));
      }),
    );
    expect(unknown).toEqual([]);
  });

  test("example values lie within their limits", () => {
    const wrong = fieldsOf(calculator).filter(([, { start, limits, typical = limits }]) => {
      const order = [limits[0], typical[0], start, typical[1], limits[1]];
      return order.some((x, i) => i > 0 && x < (order[i - 1] ?? Number.NaN));
    });
    expect(wrong.map(([id]) => id)).toEqual([]);
    for (const input of Object.values(calculator.inputs))
      if (isChoice(input)) expect(Object.keys(input.options)).toContain(input.start);
  });

  test("the limits that are printed can be typed", () => {
    let printed = 0;
    const refused = fieldsOf(calculator).flatMap(([id, field]) =>
      kinds[field.kind].units.flatMap((unit) => {
        const start = startWith(calculator, wayToShow(calculator, field));
        const saidAt = (typed: string) => {
          const entry = { typed, example: field.start, unit, shown: unit };
          const entries = { ...start, fields: { ...start.fields, [id]: entry } };
          return evaluate(calculator, entries, metric).messages[id]?.map(({ says }) => says) ?? [];
        };
        const accepted = /Accepted: (.*) to (.*?)[,.]( |$)/.exec(saidAt("1e12").join(" ")) ?? [];
        const bounds = accepted.slice(1, 3);
        printed += bounds.length;
        return bounds
          .filter((bound) => saidAt(bound).some((says) => says.includes("cannot be used here")))
          .map((bound) => `${id}: ${bound}`);
      }),
    );
    expect(refused).toEqual([]);
    expect(printed).toBeGreaterThanOrEqual(2 * fieldsOf(calculator).length);
  });

  test("the example values give numbers, and with any one choice made otherwise too", () => {
    const start = startWith(calculator, {});
    const changes = Object.entries(calculator.inputs).flatMap(([id, input]) =>
      isChoice(input) ? Object.keys(input.options).map((option) => ({ [id]: option })) : [],
    );
    for (const change of [{}, ...changes]) {
      const { outcome, messages, trouble } = evaluate(calculator, startWith(calculator, change), metric);
      expect(outcome, JSON.stringify({ change, trouble, messages })).not.toBeNull();
    }
    for (const choices of ways) {
      const entries = { ...start, choices };
      expectNumbersOrSentence(calculator, entries, evaluate(calculator, entries, metric));
    }
  });

  test("without JavaScript it shows a number for every result", () => {
    const html = renderToString(<CalculatorSheet calculator={calculator} />);
    const { choices } = startWith(calculator, {});
    const shown = Object.entries(calculator.results).filter(
      ([, result]) => !result.inPicture && isShown(calculator, result.when, choices),
    );
    expect(shown).not.toEqual([]);
    for (const [id] of shown) {
      const text = new RegExp(`data-result="${id}"[^>]*>([^<]*)</output>`).exec(html)?.[1];
      expect(text, id).toMatch(/^−?\d/);
    }
    expect(html.replace(/<[^>]*>/g, " ")).not.toMatch(notANumber);
    expect(html).not.toMatch(/="[^"]*(NaN|Infinity|undefined)[^"]*"/);
  });

  test("draws each of its pictures, with nothing in it that is no number", () => {
    // One way to make the choices for each picture, and for each core that it may show.
    const all = [...(calculator.pictures ?? []), ...(calculator.also ?? [])];
    const one = new Map<string, { choices: (typeof ways)[number]; picture: (typeof all)[number] }>();
    for (const choices of ways)
      for (const picture of picturesFor(calculator, choices)) {
        const core = picture.draw === "field" ? picture.arrangement(choices) : "";
        const key = `${all.indexOf(picture)} ${core}`;
        if (!one.has(key)) one.set(key, { choices, picture });
      }
    for (const { choices, picture } of one.values()) {
      const { outcome, given } = evaluate(calculator, startWith(calculator, choices), metric);
      if (!outcome) continue;
      const state = { calculator, given, values: outcome.values, around: metric };
      const html = renderToString(<DrawnPicture picture={picture} state={state} isStale={false} />);
      expect(html, JSON.stringify(choices)).toMatch(/<svg|<table/);
      expect(html.replace(/<[^>]*>/g, " ")).not.toMatch(notANumber);
      expect(html).not.toMatch(/="[^"]*(NaN|Infinity|undefined)[^"]*"/);
    }
  });

  test("the hoses drawn under a choice are those of an arrangement", () => {
    const drawn = Object.values(calculator.inputs).flatMap((input) =>
      isChoice(input) && input.drawn ? [input.drawn] : [],
    );
    const ids = new Set(drawn.flatMap((of) => ways.map(of)));
    expect([...ids].filter((id) => !Object.hasOwn(layouts, id))).toEqual([]);
  });

  test("every relation that a branch uses is declared, and every declared one is used", () => {
    const used = new Set(
      ways.flatMap((choices) => relationsUsed(evaluate(calculator, startWith(calculator, choices), metric))),
    );
    fc.assert(
      fc.property(entriesOf(calculator, exampleEntry), (entries) => {
        for (const id of relationsUsed(evaluate(calculator, entries, metric))) used.add(id);
      }),
      // Often enough to meet the branches that depend on values, such as ice, and water that condenses.
      { numRuns: Math.max(numRuns, 3000) },
    );
    expect(
      [...used].filter((id) => !declared.includes(id)),
      "used by the model, but not in `relations`",
    ).toEqual([]);
    expect(
      [...new Set(declared)].filter((id) => !used.has(id)),
      "in `relations`, but used by no branch",
    ).toEqual([]);
    expect(declared).toHaveLength(new Set(declared).size);
  });

  test("traced equals untraced, to the last bit", () => {
    fc.assert(
      fc.property(entriesOf(calculator, exampleEntry), around, (entries, surroundings) => {
        const { outcome, given } = evaluate(calculator, entries, surroundings);
        if (outcome) expect(tryModel(calculator, given, {})).toStrictEqual(outcome.values);
      }),
      { numRuns },
    );
  });

  test.each(fieldsOf(calculator))("any text in %s gives numbers or a sentence", (id, field) => {
    const choices = wayToShow(calculator, field);
    fc.assert(
      fc.property(typedEntry(field, anyText), around, (entry, surroundings) => {
        const start = startWith(calculator, choices, surroundings.system);
        const entries = { ...start, fields: { ...start.fields, [id]: entry } };
        expectNumbersOrSentence(calculator, entries, evaluate(calculator, entries, surroundings));
      }),
      { numRuns },
    );
  });

  test("any state gives numbers or a sentence", () => {
    const entryOf = (field: Parameters<typeof exampleEntry>[0]) =>
      fc.oneof(
        { weight: 8, arbitrary: exampleEntry(field) },
        { weight: 1, arbitrary: typedEntry(field, anyText) },
      );
    fc.assert(
      fc.property(entriesOf(calculator, entryOf), around, (entries, surroundings) => {
        expectNumbersOrSentence(calculator, entries, evaluate(calculator, entries, surroundings));
      }),
      { numRuns },
    );
  });

  test("example values are counted until they are touched", () => {
    for (const choices of ways) {
      const start = startWith(calculator, choices);
      const { fields, examples } = evaluate(calculator, start, metric);
      const shown = fieldsOf(calculator).filter(([, field]) => isShown(calculator, field.when, choices));
      expect([fields, examples]).toEqual([shown.length, shown.length]);
    }
    for (const [id, field] of fieldsOf(calculator)) {
      const start = startWith(calculator, wayToShow(calculator, field));
      const entry = start.fields[id];
      if (!entry) throw new Error(`no entry for ${id}`);
      const touched = { ...start, fields: { ...start.fields, [id]: { ...entry, typed: "1" } } };
      const before = evaluate(calculator, start, metric);
      const after = evaluate(calculator, touched, metric);
      expect([id, after.fields, after.examples]).toEqual([id, before.fields, before.examples - 1]);
    }
  });

  test("a link brings back exactly the state it was made from", () => {
    // Short texts, so that every field can hold one in a link of the length that is read.
    const text = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.string({ unit: "binary", maxLength: 6 }),
      fc.constantFrom("~5", "5;psi", "1&v=2", "a+b", "%"),
    );
    const entryOf = (field: Parameters<typeof exampleEntry>[0]) =>
      fc.oneof(
        exampleEntry(field),
        typedEntry(
          field,
          text.map((typed) => typed.slice(0, 12)),
        ),
      );
    fc.assert(
      fc.property(entriesOf(calculator, entryOf), around, (entries, surroundings) => {
        // The barometer of the page stands in the link once, not again in each calculator.
        const kept = Object.fromEntries(
          Object.entries(entries.fields).map(([id, entry]) => {
            const input = calculator.inputs[id];
            const isBarometer = input && !isChoice(input) && input.barometer;
            return [
              id,
              isBarometer ? (startWith(calculator, {}, surroundings.system).fields[id] ?? entry) : entry,
            ];
          }),
        );
        const state = { ...entries, fields: kept };
        const barometerEntry = { ...exampleOfBarometer("metric"), typed: "98.5" };
        const link = writeLink([{ calculator, entries: state }], { ...surroundings, barometerEntry });
        const opened = readLink(`#${link}`, [calculator]);
        expect(opened.unread).toEqual([]);
        expect(opened.system).toBe(surroundings.system);
        const found = opened.entries[calculator.id] ?? startWith(calculator, {}, surroundings.system);
        expect(found).toStrictEqual(state);
        expect(opened.barometer).toStrictEqual(barometerEntry);
      }),
      { numRuns },
    );
  });

  test("a damaged link never throws, and says what it could not read", () => {
    const start = startWith(calculator, {});
    const typed = Object.entries(start.fields).map(([id, entry]) => [id, { ...entry, typed: "1.5 × 2" }]);
    const link = writeLink([{ calculator, entries: { ...start, fields: Object.fromEntries(typed) } }], {
      ...metric,
      barometerEntry: exampleOfBarometer("metric"),
    });
    const key = fc.oneof(
      fc.constantFrom(
        "v",
        "units",
        "barometer",
        "",
        "constructor",
        "__proto__.toString",
        "hasOwnProperty.call",
      ),
      fc.constantFrom(
        ...[...Object.keys(calculator.inputs), "constructor", "__proto__", "toString", "<b>", "%"].flatMap(
          (id) => [
            `${calculator.id}.${id}`,
            `${calculator.id}.${id}.in`,
            `${calculator.id}.${id}.constructor`,
          ],
        ),
      ),
      fc.constantFrom(...Object.keys(calculator.results).map((id) => `${calculator.id}.${id}.in`)),
    );
    const value = fc.oneof(
      anyText,
      anyText.map((text) => encodeURIComponent(text.toWellFormed())),
      fc.tuple(anyText, anyText, anyText).map((parts) => parts.join(";")),
      fc
        .tuple(
          fc.constantFrom("~", "", "~-", "%7E"),
          fc.double(),
          fc.constantFrom(";1", ";kPa", ";degF;degC", ";%", ""),
        )
        .map((parts) => parts.join("")),
      fc.constantFrom(
        "%",
        "%E0%A4%A",
        "%00",
        "%ff",
        "%u0041",
        "+",
        ";",
        ";;;",
        "~;1",
        "~1e999;1",
        "~-0;1",
        "~0x10;1",
      ),
    );
    // Keys stand twice and more.
    const parts = fc
      .array(fc.tuple(key, value), { maxLength: 8 })
      .map((all) => [...all, ...all.slice(0, 2)].map(([k, v]) => `${k}=${v}`).join("&"));
    const damaged = fc.oneof(
      parts,
      fc.string({ unit: "binary", maxLength: 300 }),
      fc
        .tuple(fc.nat(link.length), fc.nat(10), fc.string({ unit: "binary", maxLength: 5 }))
        .map(([at, cut, put]) => link.slice(0, at) + put + link.slice(at + cut)),
      fc.constantFrom(
        "%",
        `${calculator.id}.toString=1`,
        `${calculator.id}.__proto__=~1;Pa`,
        "x".repeat(70_000),
        "constructor.x=1",
        "v=3",
        "v=constructor",
      ),
    );
    fc.assert(
      fc.property(damaged, (hash) => {
        const opened = readLink(`#${hash}`, [calculator]);
        for (const says of opened.unread) {
          expect(says).toMatch(/\.$/);
          expect(says.length).toBeLessThan(200);
        }
        expect(Object.keys(opened.entries).filter((id) => id !== calculator.id)).toEqual([]);
        const entries = opened.entries[calculator.id];
        if (!entries) return;
        const { fields, choices } = startWith(calculator, {});
        expect(Object.keys(entries.fields)).toEqual(Object.keys(fields));
        expect(Object.keys(entries.choices)).toEqual(Object.keys(choices));
        expectNumbersOrSentence(calculator, entries, evaluate(calculator, entries, metric));
      }),
      { numRuns },
    );
  });
});
