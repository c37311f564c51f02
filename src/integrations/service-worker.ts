import { readdir, readFile, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
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

/**
 * Writes the list of a built site's files, and the service worker of just this edition: `files.json` and `sw.js`. Gives the
 * number of files.
 */
export async function writeWorker(root: string): Promise<number> {
  const code = await bundled();
  const entries = await readdir(root, { recursive: true, withFileTypes: true });
  const files: [string, FileEntry][] = [];
  for (const entry of entries.filter((one) => one.isFile())) {
    const file = relative(root, join(entry.parentPath, entry.name)).replaceAll("\\", "/");
    if (left(file)) continue;
    const path = file.replace(/(^|\/)index\.html$/, "$1");
    files.push([path, await entryOf(path, await readFile(join(root, file)))]);
  }
  const edition: Edition = {
    worker: await markOf(new TextEncoder().encode(code)),
    files: Object.fromEntries(files.sort(([a], [b]) => (a < b ? -1 : 1))),
  };
  const list = JSON.stringify(edition);
  const mark = JSON.stringify(await editionMark(list));
  await writeFile(join(root, listPath), list);
  await writeFile(join(root, "sw.js"), code.replace(/(["'`])EDITION\1/, mark));
  return files.length;
}

/** Makes the site one that browsers can keep. Comes after all that makes or changes a file. */
export const serviceWorker = (): AstroIntegration => ({
  name: "service-worker",
  hooks: {
    "astro:build:done": async ({ dir, logger }) => {
      logger.info(`${await writeWorker(fileURLToPath(dir))} files can be kept`);
    },
  },
});
