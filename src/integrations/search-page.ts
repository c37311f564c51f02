import { type SymbolEntry, symbols } from "../../calc/symbols.ts";

const entries: Readonly<Record<string, SymbolEntry>> = symbols;

/**
 * A page as the search reads it: a symbol in a sentence counts as its letters, so that no hole is left there, and the
 * kind of the page can be chosen.
 */
export const searchPage = (html: string): string =>
  html
    .replace(/<span class="sym" data-symbol="(\w+)"/g, (tag, key: string) => {
      const plain = entries[key]?.plain;
      return plain ? `${tag} data-plain="${plain}" data-pagefind-index-attrs="data-plain"` : tag;
    })
    .replace(
      /data-pagefind-meta="kind:([^"]+)"/g,
      (meta, kind: string) => `${meta} data-pagefind-filter="kind:${kind}"`,
    );
