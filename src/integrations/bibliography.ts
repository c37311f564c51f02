import { Cite, plugins } from "@citation-js/core";
import "@citation-js/plugin-bibtex";
import "@citation-js/plugin-csl";
import bibtex from "../../calc/sources.bib?raw";
import csl from "./reference-style.csl?raw";

/** An entry of calc/sources.bib, formatted. */
export interface Reference {
  readonly key: string;
  /** The whole reference, as HTML. */
  readonly html: string;
  /** The same as a line of text. */
  readonly text: string;
  /** How text names it: authors or number, and year. */
  readonly short: string;
}

const options = { style: "charge-air-reference", lang: "en-US" } as const;
plugins.config.get("@csl").styles.add(options.style, csl);

const withoutWrapper = (entry: string): string => entry.replace(/^\s*<div[^>]*>|<\/div>\s*$/g, "").trim();

function format(): Map<string, Reference> {
  const all = new Cite(bibtex);
  const entries = all.format("bibliography", { ...options, format: "html", asEntryArray: true });
  const texts = new Map(all.format("bibliography", { ...options, format: "text", asEntryArray: true }));
  return new Map(
    entries.map(([key, entry]) => {
      const one = new Cite(all.data.filter(({ id }) => id === key));
      const text = texts.get(key)?.trim() ?? "";
      return [key, { key, html: withoutWrapper(entry), text, short: one.format("citation", options) }];
    }),
  );
}

/** Every entry of calc/sources.bib by key, in the order of the formatted list. */
export const references: ReadonlyMap<string, Reference> = format();

/** The entry with this key. Throws where calc/sources.bib has none. */
export function reference(key: string): Reference {
  const found = references.get(key);
  if (!found) throw new Error(`calc/sources.bib has no entry "${key}"`);
  return found;
}
