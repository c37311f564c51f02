import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";

// KaTeX's spans as markup, and as text inside the properties of an island.
const styledSpan =
  /(<|&lt;)span(?: class=("|\\?&quot;)((?:(?!\2).)*)\2)?((?:(?!>|&gt;| style=).)*) style=("|\\?&quot;)((?:(?!\5).)*)\5/g;

/**
 * Replaces the style attributes of KaTeX's spans by classes, since the content-security policy allows no style
 * attribute. `classes` collects declaration → class, so that all pages share one style sheet.
 */
export function stylesToClasses(html: string, classes: Map<string, string>): string {
  return html.replace(styledSpan, (_, open, quote, own, rest, styleQuote, style: string) => {
    const declarations = style.replace(/;$/, "");
    const name = classes.get(declarations) ?? `k${classes.size.toString(36)}`;
    classes.set(declarations, name);
    const q = quote ?? styleQuote;
    return `${open}span class=${q}${own ? `${own} ` : ""}${name}${q}${rest}`;
  });
}

/** The rules of all classes. An element has one of them, so that their order is free: alike beside alike packs to less. */
export const styleSheet = (classes: ReadonlyMap<string, string>): string =>
  [...classes]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([declarations, name]) => `.katex .${name}{${declarations}}`)
    .join("\n");

/** Runs over the built pages that contain formulas. Belongs before whatever records hashes of the built files. */
export const katexClasses = (): AstroIntegration => ({
  name: "katex-classes",
  hooks: {
    "astro:build:done": async ({ dir }) => {
      const root = fileURLToPath(dir);
      const classes = new Map<string, string>();
      const pages = new Map<string, string>();
      const files = await readdir(root, { recursive: true });
      for (const file of files.filter((f) => f.endsWith(".html")).sort()) {
        const html = await readFile(join(root, file), "utf8");
        if (/class=(?:"|\\?&quot;)katex/.test(html)) pages.set(file, stylesToClasses(html, classes));
      }
      if (pages.size === 0) return;
      const css = styleSheet(classes);
      const hash = createHash("sha256").update(css).digest("base64url").slice(0, 8);
      const name = `_astro/formulas.${hash}.css`;
      await writeFile(join(root, name), css);
      for (const [file, html] of pages)
        await writeFile(
          join(root, file),
          html.replace("</head>", `<link rel="stylesheet" href="/${name}"></head>`),
        );
    },
  },
});
