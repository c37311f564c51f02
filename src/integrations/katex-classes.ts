import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";

// KaTeX's spans as markup, and as text inside the properties of an island.
const styledSpan =
  /(<|&lt;)span(?: class=("|\\?&quot;)((?:(?!\2).)*)\2)?((?:(?!>|&gt;| style=).)*) style=("|\\?&quot;)((?:(?!\5).)*)\5/g;

/** Declarations by the name of the class that has them. */
type Classes = Map<string, string>;

/**
 * Replaces the style attributes of KaTeX's spans by classes, since the content-security policy allows no style
 * attribute. `classes` collects declaration → class, so that pages share their rules; `used` the declarations of this page.
 */
export function stylesToClasses(html: string, classes: Classes, used = new Set<string>()): string {
  return html.replace(styledSpan, (_, open, quote, own, rest, styleQuote, style: string) => {
    const declarations = style.replace(/;$/, "");
    const name = classes.get(declarations) ?? `k${classes.size.toString(36)}`;
    classes.set(declarations, name);
    used.add(declarations);
    const q = quote ?? styleQuote;
    return `${open}span class=${q}${own ? `${own} ` : ""}${name}${q}${rest}`;
  });
}

/** Rules of classes. An element has one of them, so that their order is free: alike beside alike packs to less. */
export const styleSheet = (classes: ReadonlyMap<string, string>): string =>
  [...classes]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([declarations, name]) => `.katex .${name}{${declarations}}`)
    .join("\n");

/** What no more pages than this use stands in sheets of their own: most rules are of few pages, and every page waits for what all share. */
const FEW = 3;

const link = (file: string): string => `<link rel="stylesheet" href="/${file}">`;

/** Runs over the built pages that contain formulas. Belongs before whatever records hashes of the built files. */
export const katexClasses = (): AstroIntegration => ({
  name: "katex-classes",
  hooks: {
    "astro:build:done": async ({ dir }) => {
      const root = fileURLToPath(dir);
      const classes: Classes = new Map();
      const pages: { readonly file: string; readonly html: string; readonly used: ReadonlySet<string> }[] =
        [];
      const files = await readdir(root, { recursive: true });
      for (const file of files.filter((f) => f.endsWith(".html")).sort()) {
        const html = await readFile(join(root, file), "utf8");
        if (!/class=(?:"|\\?&quot;)katex/.test(html)) continue;
        const used = new Set<string>();
        pages.push({ file, html: stylesToClasses(html, classes, used), used });
      }
      if (pages.length === 0) return;
      const counts = new Map<string, number>();
      for (const { used } of pages) for (const one of used) counts.set(one, (counts.get(one) ?? 0) + 1);
      const isShared = (declarations: string) => (counts.get(declarations) ?? 0) > FEW;
      const write = async (folder: string, belongs: (declarations: string) => boolean) => {
        const css = styleSheet(new Map([...classes].filter(([declarations]) => belongs(declarations))));
        if (css === "") return "";
        const hash = createHash("sha256").update(css).digest("base64url").slice(0, 8);
        const file = `${folder}/formulas.${hash}.css`;
        await mkdir(join(root, folder), { recursive: true });
        await writeFile(join(root, file), css);
        return link(file);
      };
      const shared = await write("_astro", isShared);
      for (const { file, html, used } of pages) {
        const own = await write("formulas", (one) => used.has(one) && !isShared(one));
        const isWhole = html.includes("</head>");
        // A fragment comes into pages that have what all share.
        const styled = isWhole ? html.replace("</head>", `${shared}${own}</head>`) : own + html;
        await writeFile(join(root, file), styled);
      }
    },
  },
});
