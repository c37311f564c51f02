import { type SymbolEntry, symbols } from "../../calc/symbols.ts";
import { entryKinds } from "./search-kinds.ts";

/** A term of the glossary. */
export interface Word {
  readonly id: string;
  readonly term: string;
  readonly means: string;
  readonly also?: readonly string[] | undefined;
}

/** What the search shows beside the pages: an address, its words, and its kind. */
export interface SearchRecord {
  readonly url: string;
  readonly content: string;
  readonly language: "en";
  readonly meta: { readonly title: string; readonly kind: string };
  readonly filters: { readonly kind: [string] };
}

const all: Readonly<Record<string, SymbolEntry>> = symbols;

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
export const searchRecords = (glossary: readonly Word[]): readonly SearchRecord[] => [
  ...Object.entries(all).map(([key, { name, plain }]) => {
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

/**
 * A page as the search reads it: a symbol in a sentence counts as its letters, so that no hole is left there, and the
 * kind of the page can be chosen.
 */
export const searchPage = (html: string): string =>
  html
    .replace(/<span class="sym" data-symbol="(\w+)"/g, (tag, key: string) => {
      const plain = all[key]?.plain;
      return plain ? `${tag} data-plain="${plain}" data-pagefind-index-attrs="data-plain"` : tag;
    })
    .replace(
      /data-pagefind-meta="kind:([^"]+)"/g,
      (meta, kind: string) => `${meta} data-pagefind-filter="kind:${kind}"`,
    );
