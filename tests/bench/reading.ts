import { globSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { syllable } from "syllable";
import { childrenOf, parsePage, textsOf, wordsOf } from "../contracts/page.ts";
import { heading } from "./report.ts";

const root = join(import.meta.dirname, "../..");
const sentences = new Intl.Segmenter("en", { granularity: "sentence" });

interface Reading {
  readonly words: number;
  readonly sentences: number;
  /** Words in a sentence, on average. */
  readonly length: number;
  readonly ease: number;
  readonly grade: number;
}

/**
 * Reading ease (Flesch 1948, Journal of Applied Psychology 32, 221–233) and school grade (Kincaid, Fishburne, Rogers and
 * Chissom 1975, Research Branch Report 8-75, Naval Technical Training Command); both from memory. Of the paragraphs as a
 * reader meets them, without headings; a computed number counts as the word “number”.
 */
function readingOf(source: string): Reading {
  const paragraphs = childrenOf(parsePage(source))
    .filter(({ type }) => type !== "heading")
    .flatMap((node) => textsOf(node));
  const all = paragraphs.flatMap((text) =>
    Array.from(sentences.segment(text), ({ segment }) => wordsOf(segment)),
  );
  const spoken = all.filter((words) => words.length > 0);
  const words = spoken.flat();
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  const length = words.length / spoken.length;
  const syllablesEach = syllables / words.length;
  return {
    words: words.length,
    sentences: spoken.length,
    length,
    ease: 206.835 - 1.015 * length - 84.6 * syllablesEach,
    grade: 0.39 * length + 11.8 * syllablesEach - 15.59,
  };
}

/** Prints how easily each lesson reads. */
export function benchReading(): void {
  heading("how easily lessons read");
  for (const file of globSync(join(root, "content/lessons/*.mdx")).sort()) {
    const { words, sentences, length, ease, grade } = readingOf(readFileSync(file, "utf8"));
    console.log(
      `  ${basename(file, ".mdx").padEnd(26)}${words} words, ${sentences} sentences of ${length.toFixed(1)}; reading ease ${ease.toFixed(0)}, grade ${grade.toFixed(1)}`,
    );
  }
}
