import fc from "fast-check";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { kinds, type UnitSystem } from "../../calc/quantity/kinds.ts";
import { exampleBarometer } from "../../src/calculators/engine/barometer.ts";
import { type Calculator, type Field, isChoice } from "../../src/calculators/engine/calculator.ts";
import {
  type Entries,
  type Entry,
  type Surroundings,
  startEntries,
} from "../../src/calculators/engine/entry.ts";
import { isShown } from "../../src/calculators/engine/shown.ts";

export { anyText } from "./any-text.ts";

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

const within = ([from, to]: readonly [SI, SI]): fc.Arbitrary<SI> =>
  fc.double({ min: from, max: to, noNaN: true }).map((x) => x + 0);

const unitOf = (field: Field): fc.Arbitrary<string> => fc.constantFrom(...kinds[field.kind].units);

/** What is counted is drawn in whole numbers: a model refuses all others. */
const numberOf = ({ limits, typical = limits, whole }: Field): fc.Arbitrary<SI> =>
  whole ? fc.integer({ min: typical[0], max: typical[1] }) : within(typical);

/** An example value anywhere within the limits of a field. */
export const exampleEntry = (field: Field): fc.Arbitrary<Entry> =>
  fc
    .tuple(numberOf(field), unitOf(field))
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
