import { readdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";
import type { GlossaryEntry } from "./glossary.ts";
import { searchPage } from "./search-page.ts";
import { searchRecords } from "./search-records.ts";

/** What has no words to find: formulas, drawings, and what a calculator computes. */
const wordless = [".katex", ".eq .tag", "svg", "[data-noindex]", "nav", "select", "output"];

/** What Pagefind writes for its own dialogs and marks and for other languages, which no page of ours loads. */
const unused = /^(?:pagefind-(?:ui|modular-ui|component-ui|highlight)|wasm\.unknown)\./;

const types: Readonly<Record<string, string>> = {
  js: "text/javascript",
  css: "text/css",
  json: "application/json",
};

/** Indexes the built pages for search. `astro dev` answers from the index of the last build. */
export function searchIndex(glossary: readonly GlossaryEntry[]): AstroIntegration {
  let out = "";
  return {
    name: "search-index",
    hooks: {
      "astro:config:done": ({ config }) => {
        out = fileURLToPath(config.outDir);
      },
      "astro:server:setup": ({ server }) => {
        server.middlewares.use("/pagefind", async (request, response, next) => {
          const path = new URL(request.url ?? "/", "http://localhost").pathname;
          try {
            const content = await readFile(join(out, "pagefind", path));
            response.setHeader(
              "content-type",
              types[path.split(".").at(-1) ?? ""] ?? "application/octet-stream",
            );
            response.end(content);
          } catch {
            next();
          }
        });
      },
      "astro:build:done": async ({ dir, logger }) => {
        const pagefind = await import("pagefind");
        const { index, errors } = await pagefind.createIndex({ excludeSelectors: wordless });
        if (!index) throw new Error(`The search index failed: ${errors.join(" ")}`);
        const root = fileURLToPath(dir);
        const pages = (await readdir(root, { recursive: true })).filter((file) => file.endsWith(".html"));
        const records = searchRecords(glossary);
        const failed: string[] = [];
        for (const sourcePath of pages) {
          const content = searchPage(await readFile(join(root, sourcePath), "utf8"));
          failed.push(...(await index.addHTMLFile({ sourcePath, content })).errors);
        }
        for (const record of records) failed.push(...(await index.addCustomRecord(record)).errors);
        if (failed.length > 0) throw new Error(`The search index failed: ${failed.join(" ")}`);
        const folder = join(root, "pagefind");
        await index.writeFiles({ outputPath: folder });
        await pagefind.close();
        for (const file of await readdir(folder)) if (unused.test(file)) await rm(join(folder, file));
        logger.info(`${pages.length} pages, symbols and terms indexed`);
      },
    },
  };
}
