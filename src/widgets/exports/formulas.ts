import { atRoot } from "../at-root.ts";

/** A relation for a text of a working, as the build writes it. */
export interface Formula {
  readonly title: string;
  /** The key of its source on the page of sources, and how well that is known. */
  readonly source: string;
  readonly standing: string;
  /** TeX. */
  readonly symbols: string;
  /** TeX with places `⟦key|position⟧` for numbers, line by line; `part` says what an implicit relation's line does. */
  readonly numbers: readonly { readonly part?: string; readonly tex: string }[];
}

export type Formulas = Readonly<Record<string, Formula>>;

/** Fetches them all at once: they are small, and steps of any choice may come next. */
export async function fetchFormulas(): Promise<Formulas> {
  const answer = await fetch(atRoot("/working/formulas.json"));
  if (!answer.ok) throw new Error(`formulas: ${answer.status}`);
  return answer.json();
}
