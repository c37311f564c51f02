import { type CollectionEntry, getCollection } from "astro:content";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { calculator } from "./calculators.ts";

/** A chapter with the lessons that it has so far, in reading order. */
export interface Chapter {
  readonly number: string;
  readonly title: string;
  readonly lessons: readonly CollectionEntry<"lessons">[];
}

/** A group of numbers, in order. */
export interface Group {
  readonly title: string;
  readonly numbers: readonly NumberEntry[];
}

/** A number's page: what its calculator is called, asks and belongs to, with the order its text stands in. */
export interface NumberEntry {
  readonly id: string;
  readonly data: CollectionEntry<"numbers">["data"] & Pick<Calculator, "title" | "asks" | "group">;
}

const byOrder = (a: { data: { order: number } }, b: { data: { order: number } }) =>
  a.data.order - b.data.order;

export const chapterOf = (lesson: CollectionEntry<"lessons">): string =>
  lesson.data.number.split(".")[0] ?? "";

export const lessonsInOrder = async () => (await getCollection("lessons")).sort(byOrder);

export const examplesInOrder = async () => (await getCollection("examples")).sort(byOrder);

export const quickInOrder = async () => (await getCollection("quick")).sort(byOrder);

/** The page of a number, named by its calculator. Throws where src/calculators/ has none by its id. */
export function numberEntry({ id, data }: CollectionEntry<"numbers">): NumberEntry {
  const { title, asks, group } = calculator(id);
  return { id, data: { ...data, title, asks, group } };
}

export const numbersInOrder = async (): Promise<readonly NumberEntry[]> =>
  (await getCollection("numbers")).sort(byOrder).map(numberEntry);

/** The chapters that have a lesson. Throws where a lesson belongs to no chapter of content/chapters.yaml. */
export async function chapters(): Promise<readonly Chapter[]> {
  const lessons = await lessonsInOrder();
  const all = await getCollection("chapters");
  for (const lesson of lessons)
    if (!all.some(({ id }) => id === chapterOf(lesson)))
      throw new Error(`content/lessons/${lesson.id}: there is no chapter ${chapterOf(lesson)}`);
  return all
    .sort((a, b) => Number(a.id) - Number(b.id))
    .map(({ id, data }) => ({
      number: id,
      title: data.title,
      lessons: lessons.filter((lesson) => chapterOf(lesson) === id),
    }))
    .filter((chapter) => chapter.lessons.length > 0);
}

/** The groups of numbers, each where its first number stands. */
export async function groups(): Promise<readonly Group[]> {
  const numbers = await numbersInOrder();
  return [...Map.groupBy(numbers, ({ data }) => data.group)].map(([title, members]) => ({
    title,
    numbers: members,
  }));
}

/** Links to what stands before and after an entry in its reading order. */
export function turnFrom<T extends { readonly id: string }>(
  entries: readonly T[],
  id: string,
  link: (entry: T) => { readonly href: string; readonly text: string },
) {
  const at = entries.findIndex((entry) => entry.id === id);
  return [entries[at - 1], entries[at + 1]].filter((entry) => entry !== undefined).map(link);
}
