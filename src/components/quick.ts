import { type CollectionEntry, getCollection } from "astro:content";

export type QuickEntry = CollectionEntry<"quick">;

export const quickInOrder = async (): Promise<readonly QuickEntry[]> =>
  (await getCollection("quick")).sort((a, b) => a.data.order - b.data.order);
