/** What people write behind ±: a standard uncertainty, one expanded by 2, or limits between which all is alike. */
export const meanings = {
  expanded: "an expanded uncertainty, k = 2",
  standard: "a standard uncertainty",
  limits: "limits: all between is alike (rectangular)",
} as const;

/** What is written behind ± of results. */
export const ways = {
  expanded: "the expanded uncertainty, k = 2",
  standard: "the standard uncertainty",
} as const;

export type Meaning = keyof typeof meanings;
export type Way = keyof typeof ways;

/** Two inputs whose errors go together, and how much, as typed: a number from −1 to 1. */
export interface Together {
  readonly a: string;
  readonly b: string;
  readonly typed: string;
}

/** How ± is meant in one calculator. */
export interface PlusMinus {
  readonly means: Meaning;
  readonly shows: Way;
  readonly together: readonly Together[];
}

/** Until somebody says otherwise: behind ± stands the expanded uncertainty, as JCGM 100:2008, 7.2.3 would have it; from memory. */
export const usual: PlusMinus = { means: "expanded", shows: "expanded", together: [] };

/** Ids of readings that are no input: the barometer, where no field in sight is it, and what is wanted of a held result. */
export const BAROMETER = "barometer";
export const WANTED = "want";

/** More pairs than these no page holds. */
export const mostPairs = 20;
/** A correlation is a short number. */
export const longestPair = 20;

export const isMeaning = (text: string): text is Meaning => Object.hasOwn(meanings, text);
export const isWay = (text: string): text is Way => Object.hasOwn(ways, text);
