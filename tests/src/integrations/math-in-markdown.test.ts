import { satteri } from "@astrojs/markdown-satteri";
import { expect, test } from "vitest";
import { mathInMarkdown } from "../../../src/integrations/math-in-markdown.ts";

const processor = satteri({ features: { math: true }, hastPlugins: [mathInMarkdown()] });

const mdx = async (text: string) => {
  const renderer = await processor.createMdxRenderer?.({ syntaxHighlight: false }, { optimize: false });
  if (!renderer) throw new Error("the Markdown processor renders no MDX");
  return (await renderer.process(text, "/lessons/charge-density.mdx", {})).code;
};

const markdown = async (text: string) => {
  const renderer = await processor.createRenderer({ syntaxHighlight: false });
  return (await renderer.render(text, { fileURL: new URL("file:///lessons/charge-density.md") })).code;
};

test("formulas in a line and on their own line", async () => {
  const html = await markdown("The ratio $r = p_2/p_1$ gives\n\n$$\np_2 = r p_1\n$$\n");
  expect(html.match(/<math/g)).toHaveLength(2);
  expect(html.match(/katex-display/g)).toHaveLength(1);
  expect(html).not.toContain("<code");
  expect(html).not.toContain("<pre");
});

test("braces and comparison signs pass through MDX", async () => {
  const code = await mdx("If $\\frac{a}{b} < T_{in}$, then\n\n$$\n\\left\\{ x \\right\\}\n$$\n");
  expect(code.match(/set:html/g)).toHaveLength(2);
  expect(code).toContain("mfrac");
});

test("other code stays code", async () => {
  expect(await markdown("`a`\n\n```\nb\n```\n")).not.toContain("katex");
});

test("bad TeX stops the build and names the file", async () => {
  await expect(markdown("$\\frac{a$")).rejects.toThrow(/\/lessons\/charge-density\.md: KaTeX parse error/);
  await expect(mdx("$\\wrong$")).rejects.toThrow(/\/lessons\/charge-density\.mdx: .*\\wrong/s);
});
