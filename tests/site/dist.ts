import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

/** The built site under test: dist/, or the folder that DIST names. */
export const dist = resolve(process.env["DIST"] ?? join(import.meta.dirname, "../../dist"));

export const files: readonly string[] = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(dist.length))
  .sort();

export const read = (file: string): Buffer => readFileSync(join(dist, file));

/** The addresses of all pages; what lies in /working/ is fetched into pages, and is none. */
export const pages: readonly string[] = files
  .filter((file) => file.endsWith(".html") && !/^\/(?:pagefind|working)\//.test(file))
  .map((file) => file.replace(/index\.html$/, ""));

export const below = (folder: string): readonly string[] =>
  pages.filter((page) => page.startsWith(folder) && page !== folder);

export const numberPages = below("/numbers/");
export const quickPages = below("/quick/");
export const lessonPages = below("/lessons/");
export const tablePages = below("/tables/");

/** The file behind the address of a page. */
export const fileOf = (page: string): string => (page.endsWith("/") ? `${page}index.html` : page);

const bySize = [...tablePages].sort((a, b) => read(fileOf(b)).length - read(fileOf(a)).length);

/**
 * Pages worth a browser each. Tables are one template over one kind of data, so of them the one with the most in it stands
 * for all, and the one with the least.
 */
export const unlikePages: readonly string[] = pages.filter(
  (page) => !bySize.includes(page) || page === bySize[0] || page === bySize.at(-1),
);
