import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import {
  fileOf,
  files,
  lessonPages,
  numberPages,
  pages,
  quickPages,
  read,
  referencePages,
  tablePages,
} from "./dist.ts";
import { address, newVisitor, open } from "./site.ts";

const kB = 1000;
const zipped = (content: Buffer | string): number => gzipSync(content, { level: 9 }).length;
const withoutWorking = (html: string): string =>
  html.replace(/<details class="work"[^>]*>[\s\S]*?<\/details>/g, "");

/** What is packed already is not packed again. */
const sizeOf = (file: string): number => {
  const content = read(file);
  return Math.min(content.length, zipped(content));
};
const sum = (list: readonly string[]): number => list.reduce((total, file) => total + sizeOf(file), 0);
const named = (list: readonly string[]): string => list.map((file) => `${file} ${sizeOf(file)}`).join("\n");

/** The files that a page names in its head: scripts, styles, fonts asked for at once. No screen waits for the style of paper. */
const headOf = (path: string): readonly string[] =>
  Array.from(
    read(fileOf(path))
      .toString()
      .replace(/<link[^>]* media="print"[^>]*>/, "")
      .matchAll(/(?:src|href)="(\/(?:_astro|formulas)\/[^"]+)"/g),
    ([, file = ""]) => file,
  );

/** A script with all that it imports before it runs. */
function withImports(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const imports = read(file)
    .toString()
    .matchAll(/(?:from|import)"\.\/([^"]+\.js)"/g);
  for (const [, name = ""] of imports) withImports(`/_astro/${name}`, seen);
  return seen;
}

const scriptsAtFirst = (path: string): readonly string[] => [
  ...new Set(
    headOf(path)
      .filter((file) => file.endsWith(".js"))
      .flatMap((file) => [...withImports(file)]),
  ),
];

/** The scripts that come later: what a calculator needs once it wakes. */
async function scriptsLater(path: string): Promise<readonly string[]> {
  const page = await newVisitor({ viewport: { width: 390, height: 844 } });
  const seen = new Set<string>();
  page.on("request", (request) => {
    if (request.url().startsWith(address)) seen.add(decodeURIComponent(new URL(request.url()).pathname));
  });
  await open(page, path);
  for (const section of await page.locator("[data-calculator]").all()) await section.scrollIntoViewIfNeeded();
  await page.waitForLoadState("networkidle");
  for (const fold of await page.locator(".back").all()) {
    await fold.locator("summary").click();
    await fold.locator("select").first().waitFor();
  }
  await page.waitForLoadState("networkidle");
  const first = scriptsAtFirst(path);
  return [...seen].filter((file) => file.endsWith(".js") && !first.includes(file));
}

/**
 * The parts that come later, by the script that starts each, and what each may take with all that it imports and no part
 * before it did.
 */
const laterParts = [
  { part: "sheet", starts: /^\/_astro\/calculator-sheet/, limit: 15.5 * kB },
  { part: "sheet of a quick answer", starts: /^\/_astro\/quick-sheet/, limit: 15 * kB },
  { part: "part of a calculator in a lesson", starts: /^\/_astro\/view-sheet/, limit: 6 * kB },
  { part: "field", starts: /^\/_astro\/drawn-field/, limit: 19 * kB },
  { part: "ranking, with hoses", starts: /^\/_astro\/drawn-ranking/, limit: 11 * kB },
  { part: "path", starts: /^\/_astro\/drawn-stations/, limit: 7 * kB },
  { part: "sum", starts: /^\/_astro\/drawn-shares/, limit: 5 * kB },
  { part: "states", starts: /^\/_astro\/drawn-states/, limit: 2 * kB },
  {
    part: "other pictures",
    starts: /^\/_astro\/drawn-(?!hoses|field|ranking|stations|shares|states)/,
    limit: 9 * kB,
  },
  { part: "hoses", starts: /^\/_astro\/drawn-hoses/, limit: 8 * kB },
  { part: "keeping", starts: /^\/_astro\/(?:register|announce)/, limit: 3 * kB },
  { part: "solving backwards", starts: /^\/_astro\/solve-panel/, limit: 7.5 * kB },
  { part: "links", starts: /^\/_astro\/page-link/, limit: 4.5 * kB },
] as const;

/** The parts that nobody takes before they use them, and what each may take beside what their page has by then. */
const partsOnUse = [
  { part: "copying and files", starts: /^\/_astro\/copy-menu/, limit: 7 * kB },
  { part: "what is uncertain", starts: /^\/_astro\/(uncertainty-panel|told)\./, limit: 14 * kB },
  { part: "starting draws", starts: /^\/_astro\/run-draws\./, limit: 7 * kB },
  { part: "drawing, with every model", starts: /^\/_astro\/draw-worker/, limit: 160 * kB },
  { part: "comparing with what is held", starts: /^\/_astro\/(compare|kept)\./, limit: 3 * kB },
] as const;

test.each(partsOnUse)("$part: little is fetched, and only on use", async ({ starts, limit }) => {
  const path = "/numbers/charge-path/";
  const later = await scriptsLater(path);
  const standing = new Set([...scriptsAtFirst(path), ...later]);
  const own = files.filter((file) => starts.test(file));
  expect(own.length).toBeGreaterThan(0);
  expect(own.filter((file) => standing.has(file))).toEqual([]);
  const list = [...new Set(own.flatMap((file) => [...withImports(file)]))].filter(
    (file) => !standing.has(file),
  );
  expect(sum(list), named(list)).toBeLessThanOrEqual(limit);
});

test("all formulas that a copied working may need are small together", () => {
  expect(sizeOf("/working/formulas.json")).toBeLessThanOrEqual(26 * kB);
});

describe.each(lessonPages)("%s", (path) => {
  test("prose and formulas fit the first flight of a connection", () => {
    expect(zipped(withoutWorking(read(fileOf(path)).toString()))).toBeLessThanOrEqual(14.6 * kB);
  });
});

describe.each([...lessonPages, ...tablePages])("%s", (path) => {
  test("the page with its working stays small", () => {
    expect(zipped(read(fileOf(path)))).toBeLessThanOrEqual(24 * kB);
  });
});

describe.each(["/", ...numberPages, ...quickPages, ...lessonPages])("%s", (path) => {
  test("takes little JavaScript at first", () => {
    const scripts = scriptsAtFirst(path);
    expect(scripts.length).toBeGreaterThan(0);
    expect(sum(scripts), named(scripts)).toBeLessThanOrEqual(30 * kB);
  });

  test("takes little more later: the definition and physics of its calculators, then each other part", async () => {
    const scripts = await scriptsLater(path);
    const counted = new Set<string>();
    const parts = laterParts.map(({ part, starts, limit }) => {
      const own = scripts.filter((file) => starts.test(file)).flatMap((file) => [...withImports(file)]);
      const files = new Set(own.filter((file) => !counted.has(file)));
      for (const file of files) counted.add(file);
      return { part, limit, files };
    });
    const rest = new Set(scripts.filter((file) => !parts.some(({ files }) => files.has(file))));
    for (const { part, limit, files } of [...parts, { part: "definition", limit: 46 * kB, files: rest }]) {
      const list = scripts.filter((file) => files.has(file));
      expect(sum(list), `${part}\n${named(list)}`).toBeLessThanOrEqual(limit);
    }
  });

  // Scripts are modules, which wait until the page stands.
  test("takes little for the first paint: the page, its styles, and the fonts that it asks for at once", () => {
    const all = [fileOf(path), ...new Set(headOf(path).filter((file) => /\.(css|woff2)$/.test(file)))];
    expect(all.length).toBeGreaterThan(2);
    expect(sum(all), named(all)).toBeLessThanOrEqual(100 * kB);
  });
});

test("what only a finger needs comes with the first touch of a field, and is little", async () => {
  const page = await newVisitor({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  await open(page, "/numbers/charge-path/");
  await page.waitForLoadState("networkidle");
  const seen: string[] = [];
  page.on("request", (request) => seen.push(decodeURIComponent(new URL(request.url()).pathname)));
  await page.locator("#charge-path-r").tap();
  await page.locator(".keys").waitFor();
  const scripts = seen.filter((file) => file.endsWith(".js"));
  expect(scripts.filter((file) => file.startsWith("/_astro/touch-parts"))).toHaveLength(1);
  expect(sum(scripts), named(scripts)).toBeLessThanOrEqual(4 * kB);
});

// Numbers pack badly. About two and a half kilobytes of each page are what every page has.
test("the reference tables and their files are small together", () => {
  const filed = files.filter((file) => /^\/tables\/[^/]+\.csv$/.test(file));
  const list = [...referencePages.map(fileOf), ...filed];
  expect(filed.length).toBeGreaterThan(0);
  expect(sum(list), named(list)).toBeLessThanOrEqual(122 * kB);
});

// Browsers and hosts keep what was sent as it was sent: packed.
test("the whole site fits on a device", () => {
  const bytes = files.reduce((total, file) => total + sizeOf(file), 0);
  expect(bytes).toBeLessThanOrEqual(3800 * kB);
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
