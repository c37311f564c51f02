const bracketsMinus = new Set(["term", "factor", "base"]);

/**
 * A written number as it stands in a formula. `at` is the position that its place was typeset for: a negative number gets
 * brackets after a sign and as a factor, and so does a power of ten where a power is taken or a slash stands before it.
 * `slotText("−0.5", "term")` is "(−0.5)".
 */
export function slotText(text: string, at: string): string {
  const brackets =
    (text.startsWith("\u2212") && bracketsMinus.has(at)) || (at === "base" && text.includes("×"));
  return brackets ? `(${text})` : text;
}
