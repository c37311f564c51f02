import { entryKinds } from "../integrations/search-kinds.ts";
import { atRoot } from "../widgets/at-root.ts";

/** What of the search library's interface is used here. */
interface Pagefind {
  options(options: { readonly excerptLength: number }): Promise<void>;
  /** Counts of all filters; the counts of a search are there only once these were asked for. */
  filters(): Promise<Filters>;
  debouncedSearch(query: string, options: SearchOptions, milliseconds: number): Promise<Search | null>;
  search(query: string, options: SearchOptions): Promise<Search>;
}

interface SearchOptions {
  readonly filters: { readonly kind?: string | { readonly any: readonly string[] } };
}

interface Search {
  readonly results: readonly Result[];
  /** Counts of this search, whatever kind is chosen. */
  readonly totalFilters: Filters;
}

interface Result {
  readonly id: string;
  data(): Promise<Found>;
}

interface Filters {
  readonly kind?: Readonly<Record<string, number>>;
}

export interface Section {
  readonly url: string;
  readonly title: string;
}

export interface Found {
  readonly url: string;
  /** HTML in which the words found are marked. */
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly kind?: string };
  readonly sub_results: readonly Section[];
}

/** What a query found: the best pages, how many there are, and how many of each kind. */
export interface Findings {
  readonly pages: readonly Found[];
  readonly count: number;
  readonly kinds: Readonly<Record<string, number>>;
}

export const mostPages = 12;
/** A word such as density names many symbols; more of them than this would push the pages out of sight. */
const mostEntries = 3;
/** Tables, calculators and quick answers repeat a word more often than the lesson that explains it. */
const leastLessons = 2;

// A variable, so that the build leaves the import alone: the index is written after it.
const address = atRoot("/pagefind/pagefind.js");

let pagefind: Promise<Pagefind> | undefined;

/** Loads the search library once; a failure is tried again with the next search. */
export function loadSearch(): Promise<Pagefind> {
  pagefind ??= (async () => {
    const loaded: Pagefind = await import(/* @vite-ignore */ address);
    await loaded.options({ excerptLength: 20 });
    await loaded.filters();
    return loaded;
  })();
  return pagefind;
}

/**
 * What a query finds, of one kind alone where one is named; null once a later query is asked. Rejects where the index
 * cannot be loaded.
 */
export async function searchPages(query: string, kind: string | null): Promise<Findings | null> {
  try {
    const library = await loadSearch();
    const search = await library.debouncedSearch(query, { filters: kind ? { kind } : {} }, 150);
    if (!search) return null;
    const entries = await library.search(query, { filters: { kind: { any: Object.values(entryKinds) } } });
    const lessons = await library.search(query, { filters: { kind: "Lesson" } });
    const chosen = kind ? search.results : mixed(search.results, entries.results, lessons.results);
    const found = await Promise.all(chosen.slice(0, mostPages).map((result) => result.data()));
    const pages = found.filter(({ excerpt }) => isMeant(query, excerpt));
    return {
      pages,
      count: pages.length === 0 ? 0 : search.results.length,
      kinds: search.totalFilters.kind ?? {},
    };
  } catch (error) {
    pagefind = undefined;
    throw error;
  }
}

/**
 * The best pages and the best few symbols and terms, in the order of the search; the other entries last. The best lessons
 * are among those that are shown.
 */
function mixed(
  results: readonly Result[],
  entries: readonly Result[],
  lessons: readonly Result[],
): readonly Result[] {
  const later = new Set(entries.slice(mostEntries).map(({ id }) => id));
  const inOrder = [
    ...results.filter(({ id }) => !later.has(id)),
    ...results.filter(({ id }) => later.has(id)),
  ];
  const wanted = new Set(lessons.slice(0, leastLessons).map(({ id }) => id));
  const shown = inOrder.slice(0, mostPages);
  const missing = inOrder.slice(mostPages).filter(({ id }) => wanted.has(id));
  for (const lesson of missing) {
    const place = shown.findLastIndex(({ id }) => !wanted.has(id));
    shown.splice(place, 1);
    shown.push(lesson);
  }
  return shown;
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/**
 * Whether what was marked begins as something that was typed does. The library shortens a word that it does not know until
 * something begins with what is left, if only one letter.
 */
function isMeant(query: string, excerpt: string): boolean {
  const marks = [...excerpt.matchAll(/<mark>(.*?)<\/mark>/g)].flatMap(([, text = ""]) => wordsOf(text));
  const typed = wordsOf(query).map((word) => word.slice(0, 3));
  return marks.length === 0 || marks.some((mark) => typed.some((start) => mark.startsWith(start)));
}
