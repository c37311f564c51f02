import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { fileOf, files, lessonPages, numberPages, pages, read } from "./dist.ts";
import { address, newVisitor, open } from "./site.ts";

const kB = 1000;
const zipped = (content: Buffer | string): number => gzipSync(content, { level: 9 }).length;
const withoutWorking = (html: string): string =>
  html.replace(/<details class="work">[\s\S]*?<\/details>/g, "");

/** What the browser fetches until the page stands, by file. */
async function fetched(path: string): Promise<readonly string[]> {
  const page = await newVisitor({ viewport: { width: 390, height: 844 } });
  const seen = new Set<string>();
  page.on("request", (request) => {
    if (request.url().startsWith(address)) seen.add(decodeURIComponent(new URL(request.url()).pathname));
  });
  await open(page, path);
  await page.waitForLoadState("networkidle");
  return [...seen].filter((file) => files.includes(file));
}

const sizeOf = (file: string): number => (file.endsWith(".woff2") ? read(file).length : zipped(read(file)));
const sum = (list: readonly string[]): number => list.reduce((total, file) => total + sizeOf(file), 0);

describe.each(lessonPages)("%s", (path) => {
  test("prose and formulas fit the first flight of a connection", () => {
    expect(zipped(withoutWorking(read(fileOf(path)).toString()))).toBeLessThanOrEqual(14.6 * kB);
  });

  test("the page with its working stays small", () => {
    expect(zipped(read(fileOf(path)))).toBeLessThanOrEqual(24 * kB);
  });
});

describe.each(["/", ...numberPages, ...lessonPages])("%s", (path) => {
  test("takes little JavaScript at first, and little in all for the first paint", async () => {
    const list = await fetched(path);
    const scripts = list.filter((file) => file.endsWith(".js"));
    const parts = (all: readonly string[]) => all.map((file) => `${file} ${sizeOf(file)}`).join("\n");
    expect(sum(scripts), parts(scripts)).toBeLessThanOrEqual(30 * kB);
    const all = [fileOf(path), ...list];
    expect(sum(all), parts(all)).toBeLessThanOrEqual(100 * kB);
  });
});

test("the whole site fits on a device", () => {
  const bytes = files.reduce((total, file) => total + read(file).length, 0);
  expect(bytes).toBeLessThanOrEqual(5000 * kB);
});

test("what works at build only is not shipped", () => {
  const telltales = /KaTeX parse error|ParseError: KaTeX|typed-function|mathjs|citation-js/i;
  const scripts = files.filter((file) => file.startsWith("/_astro/") && file.endsWith(".js"));
  expect(scripts.length).toBeGreaterThan(0);
  expect(scripts.filter((file) => telltales.test(read(file).toString()))).toEqual([]);
});

test("no page holds a style of its own", () => {
  expect(pages.filter((page) => /<style|\sstyle="/.test(read(fileOf(page)).toString()))).toEqual([]);
});
