import { readFileSync } from "node:fs";
import { satteri, satteriHeadingIdsPlugin } from "@astrojs/markdown-satteri";
import mdx from "@astrojs/mdx";
import preact from "@astrojs/preact";
import { defineConfig } from "astro/config";
import { parse } from "yaml";
import { glossaryTerms } from "./src/integrations/glossary-terms.ts";
import { headersFile } from "./src/integrations/headers-file.ts";
import { katexClasses } from "./src/integrations/katex-classes.ts";
import { katexFonts } from "./src/integrations/katex-fonts.ts";
import { leanRelations } from "./src/integrations/lean-relations.ts";
import { mathInMarkdown } from "./src/integrations/math-in-markdown.ts";
import { searchIndex } from "./src/integrations/search-index.ts";
import { serviceWorker } from "./src/integrations/service-worker.ts";
import { subPath } from "./src/integrations/sub-path.ts";

const expected = new Set([
  // MDX itself writes a directive into each file.
  "MODULE_LEVEL_DIRECTIVE",
  // The build takes every calculator at once, the browser one at a time.
  "INEFFECTIVE_DYNAMIC_IMPORT",
]);

const glossary = parse(readFileSync("content/glossary.yaml", "utf8"));

export default defineConfig({
  site: "https://charge-air.example",
  // A site that stands below a path of its host: BASE=/some/path/ npm run build
  base: process.env.BASE ?? "/",
  trailingSlash: "always",
  // Without loss: a line break in a sentence stays a space.
  compressHTML: true,
  markdown: {
    // Highlighting would need style attributes, which the content-security policy forbids.
    syntaxHighlight: false,
    processor: satteri({
      features: { math: true, headingAttributes: true },
      hastPlugins: [
        satteriHeadingIdsPlugin(),
        mathInMarkdown(),
        glossaryTerms(glossary, "/content/lessons/"),
      ],
    }),
  },
  // Formulas get their classes before the pages are indexed. What lists the built files comes after all that makes some.
  integrations: [
    mdx(),
    preact(),
    katexClasses(),
    subPath(),
    searchIndex(glossary),
    serviceWorker(),
    headersFile(),
  ],
  build: { inlineStylesheets: "never" },
  vite: {
    plugins: [katexFonts(), leanRelations()],
    // What makes draws off the main thread is one file with the models of all calculators.
    worker: { format: "es", plugins: () => [leanRelations()] },
    build: {
      // Browsers that do not know light-dark() and nesting.
      cssTarget: ["chrome111", "edge111", "firefox114", "safari16.4"],
      // A font or script inside another file would need a data: source in the policy.
      assetsInlineLimit: 0,
      rolldownOptions: {
        onLog: (level, log, next) => {
          if (!expected.has(log.code)) next(level, log);
        },
      },
    },
  },
});
