import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { kinds } from "../../calc/quantity/kinds.ts";
import {
  aliases,
  calculatorNow,
  inputNow,
  isRetired,
  optionNow,
  resultNow,
} from "../../src/calculators/engine/aliases.ts";
import { readBarometer } from "../../src/calculators/engine/barometer.ts";
import { isChoice } from "../../src/calculators/engine/calculator.ts";
import { startEntries } from "../../src/calculators/engine/entry.ts";
import { evaluate } from "../../src/calculators/engine/evaluate.ts";
import { exampleAt, version } from "../../src/calculators/engine/former-examples.ts";
import { writeLink } from "../../src/calculators/engine/link.ts";
import { readLink } from "../../src/calculators/engine/read-link.ts";
import { calculators } from "./every-calculator.ts";
import { publicIds } from "./public-ids.ts";

const file = join(import.meta.dirname, "public-ids.txt");
const published = readFileSync(file, "utf8").split("\n").filter(Boolean);
const now = publicIds(calculators.map(({ calculator }) => calculator));

const byId = new Map(calculators.map(({ calculator }) => [calculator.id, calculator]));

/** The rest of each line that begins with a word, in its parts: a unit may hold spaces, so the last part takes all. */
const linesOf = (word: string, parts: number): readonly (readonly string[])[] =>
  published
    .filter((line) => line.startsWith(`${word} `))
    .map((line) => {
      const all = line.split(" ").slice(1);
      return [...all.slice(0, parts - 1), all.slice(parts - 1).join(" ")];
    });

/** A published `calculator.id` as it is called now; what follows the first point is the id. */
function nowOf(name: string, idNow: (calculator: string, id: string) => string) {
  const at = name.indexOf(".");
  const of = calculatorNow(name.slice(0, at));
  const old = name.slice(at + 1);
  return { calculator: byId.get(of), of, old, id: idNow(of, old) };
}

const has = (table: object | undefined, id: string) => table !== undefined && Object.hasOwn(table, id);

describe("public ids stay: a link that was sent has to open", () => {
  test(`each one of today is listed in ${file}: add the lines shown`, () => {
    expect(now.filter((line) => !published.includes(line))).toEqual([]);
  });

  test("the list is sorted, and names nothing twice", () => {
    expect(published).toEqual([...new Set(published)].sort());
  });

  test("a calculator, input, result or option that was renamed has its old id in engine/aliases.ts", () => {
    const lost = [
      ...linesOf("calculator", 1).filter(([id = ""]) => !byId.has(calculatorNow(id))),
      ...linesOf("input", 2).filter(([name = ""]) => {
        const { calculator, of, old, id } = nowOf(name, inputNow);
        return !has(calculator?.inputs, id) && !isRetired(of, old);
      }),
      ...linesOf("result", 2).filter(([name = ""]) => {
        const { calculator, id } = nowOf(name, resultNow);
        return !has(calculator?.results, id);
      }),
      ...linesOf("option", 2).filter(([name = "", option = ""]) => {
        const { calculator, of, old, id } = nowOf(name, inputNow);
        const input = has(calculator?.inputs, id) ? calculator?.inputs[id] : undefined;
        if (!input) return !isRetired(of, old);
        return !isChoice(input) || !has(input.options, optionNow(of, id, option));
      }),
    ];
    expect(lost.map((line) => line.join(" "))).toEqual([]);
  });

  test("a unit that a field offered is offered for ever, whatever kind the field is now", () => {
    const unitsOf = (kind: string) =>
      linesOf("unit", 2).flatMap(([of, unit = ""]) => (of === kind ? [unit] : []));
    const lost = linesOf("input", 2).flatMap(([name = "", kind = ""]) => {
      const { calculator, id } = nowOf(name, inputNow);
      const input = calculator?.inputs[id];
      if (!input || isChoice(input)) return [];
      const offered: readonly string[] = kinds[input.kind].units;
      return unitsOf(kind)
        .filter((unit) => !offered.includes(unit))
        .map((unit) => `${name} in ${unit}`);
    });
    expect(lost).toEqual([]);
  });

  test("an example that changed has its old value, and links a new version, in engine/former-examples.ts", () => {
    const wrong = linesOf("example", 3).filter(([of = "", name = "", start = ""]) => {
      const { calculator, of: calculatorId, id } = nowOf(name, inputNow);
      const input = calculator?.inputs[id];
      if (!input) return !isRetired(calculatorId, id);
      const meant = exampleAt(calculatorId, id, Number(of)) ?? input.start;
      return String(meant) !== (isChoice(input) ? optionNow(calculatorId, id, start) : start);
    });
    expect(wrong.map((line) => line.join(" "))).toEqual([]);
    expect(linesOf("example", 3).every(([of]) => Number(of) <= version)).toBe(true);
  });

  test("an alias leads from what is no more to what is", () => {
    const wrong = [
      ...Object.entries(aliases.calculators).filter(([old, id]) => byId.has(old) || !byId.has(id)),
      ...(["inputs", "results"] as const).flatMap((part) =>
        Object.entries(aliases[part]).filter(([old, id]) => {
          const table = byId.get(old.slice(0, old.indexOf(".")))?.[part];
          return has(table, old.slice(old.indexOf(".") + 1)) || !has(table, id);
        }),
      ),
      ...Object.entries(aliases.options).filter(([old, id]) => {
        const [of = "", choice = "", option = ""] = old.split(".");
        const input = byId.get(of)?.inputs[choice];
        return !input || !isChoice(input) || has(input.options, option) || !has(input.options, id);
      }),
    ];
    expect(wrong).toEqual([]);
  });
});

interface Frozen {
  /** What is in it that may be lost. */
  readonly holds: string;
  readonly calculator: string;
  readonly link: string;
  /** What it gives the model, in SI: as whoever wrote it saw it. Inputs that came later are not named. */
  readonly opens: Readonly<Record<string, number | string>>;
}

// Links that were written by earlier versions of the site. They are not changed; more may follow.
const frozen: readonly Frozen[] = JSON.parse(
  readFileSync(join(import.meta.dirname, "frozen-links.json"), "utf8"),
);

test("there are frozen links of every calculator", () => {
  const missing = [...byId.keys()].filter((id) => !frozen.some(({ calculator }) => calculator === id));
  expect(missing).toEqual([]);
});

describe.each(frozen)("$calculator: $holds", ({ calculator: id, link, opens }) => {
  const calculator = byId.get(calculatorNow(id));
  if (!calculator) throw new Error(`no calculator ${id}`);

  /** What a link gives the model. */
  const givenBy = (hash: string) => {
    const opened = readLink(hash, [calculator]);
    const reading = opened.barometer && readBarometer(opened.barometer);
    if (!reading?.ok || !opened.system) throw new Error(`barometer or units lost from ${hash}`);
    const around = { system: opened.system, barometer: { value: reading.value, isExample: false } };
    const entries = opened.entries[calculator.id] ?? startEntries(calculator, opened.system);
    const { given, outcome } = evaluate(calculator, entries, around);
    return { opened, entries, around, given, outcome };
  };

  test("is read in full, to the same SI values", () => {
    const { opened, given, outcome } = givenBy(`#${link}`);
    expect(opened.unread).toEqual([]);
    expect(outcome).not.toBeNull();
    expect(given).toMatchObject(
      Object.fromEntries(
        Object.entries(opens).map(([input, value]) => [
          input,
          typeof value === "number"
            ? expect.closeTo(value, 12 - Math.ceil(Math.log10(Math.abs(value) + 1e-6)))
            : value,
        ]),
      ),
    );
  });

  test("written again by this version it says the same", () => {
    const { opened, entries, around, given } = givenBy(link);
    if (!opened.barometer) throw new Error("no barometer");
    const again = writeLink([{ calculator, entries }], { ...around, barometerEntry: opened.barometer });
    expect(givenBy(again).given).toStrictEqual(given);
    expect(again.length).toBeLessThanOrEqual(link.length);
  });
});
