import { type CollectionEntry, getCollection, getEntry } from "astro:content";
import { calculator } from "./calculators.ts";
import { changed, type Typed, type Worked, type WorkedExample, work, workExample } from "./worked-example.ts";

export const examplesInOrder = async () =>
  (await getCollection("examples")).sort((a, b) => a.data.order - b.data.order);

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

/** The numbers of an example, with some of what was typed changed. */
export async function variant(id: string, changes: Partial<Typed>): Promise<Worked> {
  const entry = await entryOf(id);
  const of = calculator(entry.data.calculator);
  return work(of, changed(entry.data, of, changes), fileOf(entry));
}
