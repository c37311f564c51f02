/** The sentence that refuses a text: what is wrong with it. It never leaves the readers of this folder. */
export class Refusal extends Error {}

export const quote = (text: string): string => {
  const letters = [...text.replace(/\p{C}/gu, "")];
  return `“${letters.slice(0, 30).join("")}${letters.length > 30 ? "…" : ""}”`;
};
