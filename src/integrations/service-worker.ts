import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import type { AstroIntegration } from "astro";
import { build, type Rolldown } from "vite";
import {
  type Edition,
  editionMark,
  type FileEntry,
  isNamedByContent,
  listPath,
  markOf,
} from "../offline/edition.ts";

const source = fileURLToPath(new URL("../offline/worker.ts", import.meta.url));

/** What the worker leaves to the network: itself, what only hosts read, and what stands in frames of other sites. */
const left = (file: string): boolean =>
  ["sw.js", listPath, "_headers"].includes(file) || file.startsWith("embed/");

const titleOf = (html: string): string | undefined =>
  /<title>([^<]*)<\/title>/
    .exec(html)?.[1]
    ?.replace(/ · [^·]*$/, "")
    .replaceAll("&amp;", "&")
    .replaceAll("&#39;", "'");

async function entryOf(path: string, content: Buffer): Promise<FileEntry> {
  const mark = isNamedByContent(path) ? "" : await markOf(new Uint8Array(content));
  const size = gzipSync(content).length;
  const title = path === "" || path.endsWith("/") ? titleOf(content.toString()) : undefined;
  return title ? [mark, size, title] : [mark, size];
}

/** The worker as one script, without the mark of its edition. */
async function bundled(): Promise<string> {
  const result = (await build({
    configFile: false,
    logLevel: "warn",
    build: {
      write: false,
      rolldownOptions: { input: source, output: { format: "iife" } },
    },
  })) as Rolldown.RolldownOutput;
  return result.output[0].code;
}

/** Writes the list of the site's files, and the service worker of just this edition. It has to come last: it reads what was built. */
export const serviceWorker = (): AstroIntegration => ({
  name: "service-worker",
  hooks: {
    "astro:build:done": async ({ dir, logger }) => {
      const root = fileURLToPath(dir);
      const code = await bundled();
      const files: Record<string, FileEntry> = {};
      for (const entry of (await readdir(root, { recursive: true, withFileTypes: true })).filter((one) =>
        one.isFile(),
      )) {
        const file = join(entry.parentPath, entry.name).slice(root.length).replaceAll("\\", "/");
        if (left(file)) continue;
        const path = file.replace(/(^|\/)index\.html$/, "$1");
        files[path] = await entryOf(path, await readFile(join(root, file)));
      }
      const sorted = Object.fromEntries(Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1)));
      const edition: Edition = { worker: await markOf(new TextEncoder().encode(code)), files: sorted };
      const list = JSON.stringify(edition);
      await writeFile(join(root, listPath), list);
      await writeFile(
        join(root, "sw.js"),
        code.replace(/(["'`])EDITION\1/, JSON.stringify(await editionMark(list))),
      );
      logger.info(`${Object.keys(files).length} files can be kept`);
    },
  },
});
