import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

/** The built site under test: dist/, or the folder that DIST names. */
export const dist = resolve(process.env["DIST"] ?? join(import.meta.dirname, "../../dist"));

export const files: readonly string[] = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(dist.length))
  .sort();

export const read = (file: string): Buffer => readFileSync(join(dist, file));

const addresses = files
  .filter((file) => file.endsWith(".html"))
  .map((file) => file.replace(/index\.html$/, ""));

/** The addresses of all pages; what lies in /working/ is fetched into pages, and is none. */
export const pages: readonly string[] = addresses.filter(
  (page) => !/^\/(?:embed|pagefind|working)\//.test(page),
);
/** Calculators alone, to be framed on other sites. */
export const embedPages: readonly string[] = addresses.filter((page) => page.startsWith("/embed/"));

export const below = (folder: string): readonly string[] =>
  pages.filter((page) => page.startsWith(folder) && page !== folder);

export const numberPages = below("/numbers/");
export const quickPages = below("/quick/");
export const lessonPages = below("/lessons/");
export const examplePages = below("/examples/");
export const tablePages = below("/tables/");
export const effectivenessPages = below("/tables/effectiveness/");
export const referencePages = tablePages.filter((page) => !effectivenessPages.includes(page));

/** The file behind the address of a page. */
export const fileOf = (page: string): string => (page.endsWith("/") ? `${page}index.html` : page);

/** Of pages that are one template over one kind of content, the one with the most in it and the one with the least. */
export const extremesOf = (alike: readonly string[]): readonly string[] => {
  const bySize = [...alike].sort((a, b) => read(fileOf(b)).length - read(fileOf(a)).length);
  return bySize.filter((_, i) => i === 0 || i === bySize.length - 1);
};

const tablesApart = [effectivenessPages, referencePages].flatMap(extremesOf);

/** Pages worth a browser each: the extremes of the tables stand for all of them. */
export const unlikePages: readonly string[] = pages.filter(
  (page) => !tablePages.includes(page) || tablesApart.includes(page),
);
