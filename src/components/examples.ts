import { type CollectionEntry, getEntry } from "astro:content";
import { exampleBarometer } from "../calculators/engine/barometer.ts";
import { calculator } from "./calculators.ts";
import { changed, type Typed, type Worked, type WorkedExample, work, workExample } from "./worked-example.ts";

const fileOf = (entry: CollectionEntry<"examples">) => `content/examples/${entry.id}.mdx`;

async function entryOf(id: string): Promise<CollectionEntry<"examples">> {
  const entry = await getEntry("examples", id);
  if (!entry) throw new Error(`No example “${id}”. Expected a file of content/examples/ by that name.`);
  return entry;
}

/** An example by its file's name, worked in full. Throws where there is none, or where its values have no result. */
export async function example(
  id: string,
): Promise<{ entry: CollectionEntry<"examples">; worked: WorkedExample }> {
  const entry = await entryOf(id);
  return { entry, worked: workExample(entry.data, calculator(entry.data.calculator), fileOf(entry)) };
}

/** Whose numbers a text wants: those of an example, with some of what was typed changed, or those of a calculator. */
export interface Asked {
  readonly example?: string | undefined;
  readonly calculator?: string | undefined;
  readonly choices?: Typed["choices"] | undefined;
  readonly given?: Typed["given"] | undefined;
  readonly barometer?: string | undefined;
}

/** Works what a text asks for. Throws unless it names either an example or a calculator; `page` is named in errors. */
export async function workedFor(asked: Asked, page: string): Promise<Worked> {
  const { example: id, calculator: calculatorId, choices = {}, given = {}, barometer } = asked;
  if (calculatorId && !id)
    return work(
      calculator(calculatorId),
      { choices, given, barometer: barometer ?? `${exampleBarometer} Pa` },
      `A number on ${page}`,
    );
  if (!id || calculatorId) throw new Error(`A number on ${page} takes either an example or a calculator.`);
  const entry = await entryOf(id);
  const of = calculator(entry.data.calculator);
  const changes = { choices, given, ...(barometer && { barometer }) };
  return work(of, changed(entry.data, of, changes), fileOf(entry));
}
