/** A typed text as a sentence may repeat it: without what cannot be printed, and not longer than a line. */
export function repeated(text: string): string {
  const letters = [...text.trim().replace(/\p{C}/gu, "")];
  return letters.slice(0, 30).join("") + (letters.length > 30 ? "…" : "");
}

/** The same between quotation marks. */
export const quote = (text: string): string => `“${repeated(text)}”`;
