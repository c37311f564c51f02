import type { SatteriMarkdownProcessorOptions } from "@astrojs/markdown-satteri";
import type { HastNode } from "satteri";
import type { GlossaryEntry } from "./glossary.ts";

type HastPlugin = NonNullable<SatteriMarkdownProcessorOptions["hastPlugins"]>[number];

/** What finding a term needs of it. */
type Term = Omit<GlossaryEntry, "means">;

/** Where a reader may stop for a meaning: running text, on the page or inside one of these. */
const paragraphs: ReadonlySet<string> = new Set(["p", "li"]);
const inline: ReadonlySet<string> = new Set(["em", "strong"]);
const texts: ReadonlySet<string> = new Set(["Caution", "Guess", "Margin", "Note", "Predict", "Question"]);

/** With more than this in a lesson, the text would look like a list of words. */
const mostTerms = 12;

/** Any of the words, the longest first, so that “total pressure” is not taken for “pressure”. A plural counts too. */
function patternOf(terms: readonly Term[]): RegExp {
  const words = terms.flatMap(({ term, also = [] }) => [term, ...also]).sort((a, b) => b.length - a.length);
  return new RegExp(
    String.raw`(?<![\p{L}\p{N}-])(?:${words.map(RegExp.escape).join("|")})s?(?![\p{L}\p{N}-])`,
    "giu",
  );
}

/**
 * Opens a term of the glossary where a lesson first uses it: its word becomes `<Term id="…">`. Headings, links, code and
 * what other components show stay as they are. Only files whose path holds `within` are read.
 */
export const glossaryTerms = (terms: readonly Term[], within: string): HastPlugin => {
  const pattern = patternOf(terms);
  const byWord = new Map(
    terms.flatMap(({ id, term, also = [] }) =>
      [term, ...also].map((word) => [word.toLowerCase(), id] as const),
    ),
  );
  const idOf = (found: string): string | undefined => {
    const word = found.toLowerCase();
    return byWord.get(word) ?? byWord.get(word.replace(/s$/, ""));
  };
  return ({ fileURL, sourceFormat }) => {
    if (sourceFormat !== "mdx" || !fileURL?.pathname.includes(within)) return null;
    const used = new Set<string>();
    return {
      name: "glossary-terms",
      text(node, context) {
        let isParagraph = false;
        for (let at: Readonly<HastNode> | undefined = context.parent(node); at; at = context.parent(at)) {
          const name = at.type === "element" ? at.tagName : "name" in at ? (at.name ?? "") : "";
          if (paragraphs.has(name)) isParagraph = true;
          else if (at.type !== "root" && !inline.has(name) && !texts.has(name)) return;
        }
        if (!isParagraph) return;
        const parts: object[] = [];
        let from = 0;
        for (const match of node.value.matchAll(pattern)) {
          const id = idOf(match[0]);
          if (!id || used.has(id) || used.size >= mostTerms) continue;
          used.add(id);
          parts.push({ type: "text", value: node.value.slice(from, match.index) });
          parts.push({
            type: "mdxJsxTextElement",
            name: "Term",
            attributes: [{ type: "mdxJsxAttribute", name: "id", value: id }],
            children: [{ type: "text", value: match[0] }],
          });
          from = match.index + match[0].length;
        }
        if (parts.length === 0) return;
        parts.push({ type: "text", value: node.value.slice(from) });
        context.replaceNode(node, parts as never);
      },
    };
  };
};
