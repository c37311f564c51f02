/** Kinds of what the search finds that is no page of its own: many, and short. */
export const entryKinds = { symbol: "Symbol", term: "Term" } as const;
