import { type SymbolEntry, symbols } from "../../calc/symbols.ts";
import type { GlossaryEntry } from "./glossary.ts";
import { entryKinds } from "./search-kinds.ts";

/** What the search shows beside the pages: an address, its words, and its kind. */
export interface SearchRecord {
  readonly url: string;
  readonly content: string;
  readonly language: "en";
  readonly meta: { readonly title: string; readonly kind: string };
  readonly filters: { readonly kind: [string] };
}

const record = (kind: string, title: string, url: string, content: string): SearchRecord => ({
  url,
  content,
  language: "en",
  meta: { title, kind },
  filters: { kind: [kind] },
});

/**
 * Each symbol and each term as a thing to find by itself. A symbol is found by its letter, by the name of that letter, by
 * its name, and as people type it: `T_2` and `T2`.
 */
export const searchRecords = (glossary: readonly GlossaryEntry[]): readonly SearchRecord[] => [
  ...Object.entries<SymbolEntry>(symbols).map(([key, { name, plain }]) => {
    const typed = [key, plain].flatMap((text) => [text, text.replaceAll("_", ""), text.replaceAll("_", " ")]);
    const words = [...new Set(typed)].join(", ");
    return record(
      entryKinds.symbol,
      `${plain}, ${name}`,
      `/symbols/#symbol-${key}`,
      `${name}. Typed as ${words}.`,
    );
  }),
  ...glossary.map(({ id, term, means, also = [] }) =>
    record(entryKinds.term, term, `/glossary/#${id}`, [`${term}: ${means}`, ...also].join(" ")),
  ),
];
