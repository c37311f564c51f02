import { fileURLToPath } from "node:url";
import type { SatteriMarkdownProcessorOptions } from "@astrojs/markdown-satteri";
import { renderTex } from "./typeset/render-tex.ts";

type HastPlugin = NonNullable<SatteriMarkdownProcessorOptions["hastPlugins"]>[number];

const marksMath = (node: { type: string }): boolean => {
  const { tagName, properties } = node as { tagName?: string; properties?: { className?: unknown } };
  const classes = properties?.className;
  return tagName === "code" && Array.isArray(classes) && classes.includes("language-math");
};

/**
 * Typesets `$...$` and `$$...$$` of Markdown and MDX, which arrive as code of the language `math`. Needs the Markdown
 * feature `math`. TeX that KaTeX does not accept fails the build, with the file's name.
 */
export const mathInMarkdown = (): HastPlugin => ({
  name: "math-in-markdown",
  element: {
    filter: ["pre", "code"],
    visit(node, context) {
      const display = node.tagName === "pre";
      const code = display ? node.children.find(marksMath) : node;
      if (!code || !marksMath(code)) return;
      if (!display && (context.parent(node) as { tagName?: string } | undefined)?.tagName === "pre") return;
      const html = typeset(context.textContent(code), display, context.fileURL);
      if (context.sourceFormat !== "mdx") return { type: "raw", value: html };
      // MDX cannot compile raw HTML, but it can set the HTML of a fragment.
      return {
        type: display ? "mdxJsxFlowElement" : "mdxJsxTextElement",
        name: "Fragment",
        attributes: [{ type: "mdxJsxAttribute", name: "set:html", value: html }],
        children: [],
      };
    },
  },
});

function typeset(tex: string, display: boolean, file: URL | undefined): string {
  try {
    return renderTex(tex, { display });
  } catch (error) {
    const where = file ? fileURLToPath(file) : "Markdown";
    throw new Error(`${where}: ${(error as Error).message}`, { cause: error });
  }
}
