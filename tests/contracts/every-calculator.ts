import fc from "fast-check";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { kinds, type UnitSystem } from "../../calc/quantity/kinds.ts";
import { units } from "../../calc/quantity/units.ts";
import { exampleBarometer } from "../../src/calculators/engine/barometer.ts";
import { type Calculator, type Field, isChoice } from "../../src/calculators/engine/calculator.ts";
import {
  type Entries,
  type Entry,
  type Surroundings,
  startEntries,
} from "../../src/calculators/engine/entry.ts";
import { isShown } from "../../src/calculators/engine/shown.ts";

const files = import.meta.glob<{ default: Calculator }>("../../src/calculators/*.ts", { eager: true });

/** Every calculator with the name of its file. */
export const calculators = Object.entries(files).map(([path, file]) => ({
  file: path.replace(/^.*\//, "").replace(/\.ts$/, ""),
  calculator: file.default,
}));

export const fieldsOf = (calculator: Calculator): readonly (readonly [string, Field])[] =>
  Object.entries(calculator.inputs).flatMap(([id, input]) => (isChoice(input) ? [] : [[id, input] as const]));

type Choices = Readonly<Record<string, string>>;

/** Every way to make the choices of a calculator. */
export const waysOf = (calculator: Calculator): readonly Choices[] =>
  Object.entries(calculator.inputs).reduce<readonly Choices[]>(
    (ways, [id, input]) =>
      isChoice(input)
        ? ways.flatMap((way) => Object.keys(input.options).map((option) => ({ ...way, [id]: option })))
        : ways,
    [{}],
  );

/** The start entries with these choices made. */
export const startWith = (
  calculator: Calculator,
  choices: Choices,
  system: UnitSystem = "metric",
): Entries => {
  const start = startEntries(calculator, system);
  return { ...start, choices: { ...start.choices, ...choices } };
};

/** Choices under which a field is shown. */
export function wayToShow(calculator: Calculator, field: Field): Choices {
  const way = waysOf(calculator).find((choices) => isShown(calculator, field.when, choices));
  if (!way) throw new Error(`${calculator.id}: no choice shows ${field.label}`);
  return way;
}

export const metric: Surroundings = {
  system: "metric",
  barometer: { value: exampleBarometer, isExample: true },
};

export const around: fc.Arbitrary<Surroundings> = fc.record({
  system: fc.constantFrom<UnitSystem>("metric", "us"),
  barometer: fc.record({
    value: fc.double({ min: 40_000, max: 110_000, noNaN: true }),
    isExample: fc.boolean(),
  }),
});

/** Pieces of calculations as people type them, and of what is none. */
const piece = fc.oneof(
  fc.double().map(String),
  fc.integer({ min: -9, max: 1200 }).map(String),
  fc.constantFrom(...Object.values(units).flatMap(({ id, label, names }) => [id, label, ...names])),
  fc.constantFrom(
    ...[
      "+",
      "-",
      "−",
      "–",
      "*",
      "×",
      "·",
      "/",
      "÷",
      "^",
      "^-1",
      "²",
      "(",
      ")",
      "((",
      "))",
      ",",
      ".",
      "%",
      "~",
      ";",
    ],
    ...[
      "at 60 °F",
      "at 60 °F 14.7 psi",
      "at",
      "gauge",
      "absolute",
      "psig",
      "e",
      "1e999",
      "-0",
      "3/8 in",
      "5'3\"",
    ],
    ...["constructor", "__proto__", "toString", "NaN", "Infinity", "π", "½", "١٢", "=1+1", "<b>1</b>"],
  ),
);

/** Much of one thing: brackets in brackets, signs in a row, digits without end. */
const heap = fc
  .tuple(
    fc.constantFrom("(", ")", "-", "1+", "2^", "1/", "9", "1 bar+", "at ", " ", "%", "é", "𝟙"),
    fc.nat(10_000),
  )
  .map(([one, times]) => one.repeat(times));

/** Texts that people type, and texts that nobody should. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ maxLength: 200 }),
  fc.string({ unit: "binary", maxLength: 40 }),
  fc
    .tuple(fc.double(), fc.constantFrom("", " ", "\u00a0"), fc.constantFrom(...Object.values(units)))
    .map(([number, space, unit]) => `${number}${space}${unit.label}`),
  fc
    .tuple(fc.array(piece, { minLength: 1, maxLength: 12 }), fc.constantFrom("", " "))
    .map(([pieces, space]) => pieces.join(space)),
  fc.tuple(heap, piece, heap).map((parts) => parts.join("").slice(0, 10_000)),
  // As deep as a field takes: inside the length that is read.
  fc
    .tuple(fc.integer({ min: 1, max: 95 }), piece)
    .map(([deep, inside]) => `${"(".repeat(deep)}${inside}${")".repeat(deep)}`),
  fc.constantFrom(
    "",
    " ",
    "-0",
    "1e400",
    "1e999",
    "NaN",
    "Infinity",
    "undefined",
    "0",
    "−1",
    "1e-320",
    "~5",
    "5;psi",
    "50 %",
    "__proto__",
    "constructor",
    "\ud800",
    "<img src=x onerror=alert(1)>",
  ),
);

const within = ([from, to]: readonly [SI, SI]): fc.Arbitrary<SI> =>
  fc.double({ min: from, max: to, noNaN: true }).map((x) => x + 0);

const unitOf = (field: Field): fc.Arbitrary<string> => fc.constantFrom(...kinds[field.kind].units);

/** An example value anywhere within the limits of a field. */
export const exampleEntry = (field: Field): fc.Arbitrary<Entry> =>
  fc
    .tuple(within(field.typical ?? field.limits), unitOf(field))
    .map(([example, unit]) => ({ typed: null, example, unit, shown: unit }));

/** Something typed into a field, in one of its units and shown in another. */
export const typedEntry = (field: Field, text: fc.Arbitrary<string>): fc.Arbitrary<Entry> =>
  fc
    .tuple(text, unitOf(field), unitOf(field))
    .map(([typed, unit, shown]) => ({ typed, example: field.start, unit, shown }));

/** Any state of a calculator, with fields as `entryOf` makes them. */
export const entriesOf = (
  calculator: Calculator,
  entryOf: (field: Field) => fc.Arbitrary<Entry>,
): fc.Arbitrary<Entries> =>
  fc.record({
    choices: fc.constantFrom(...waysOf(calculator)),
    fields: fc.record(Object.fromEntries(fieldsOf(calculator).map(([id, field]) => [id, entryOf(field)]))),
  });

/** How often a property is tried. */
export const numRuns = Number(process.env["FAST_CHECK_RUNS"] ?? 100);
