import { describe, expect, test } from "vitest";
import { effectivenessPages, fileOf, files, read, referencePages } from "./dist.ts";
import { address, newVisitor, notANumber, open } from "./site.ts";

/** Rows of the table in a page as numbers, the first of each row its NTU, with the R of the columns above them. */
function tableIn(html: string) {
  const numbersIn = (part: string) =>
    Array.from(part.matchAll(/<t[hd][^>]*>(-?[\d.]+)<\/t[hd]>/g), ([, text]) => Number(text));
  const [, head = "", body = ""] = /<thead>([\s\S]*?)<\/thead>\s*<tbody>([\s\S]*?)<\/tbody>/.exec(html) ?? [];
  return {
    R: numbersIn(head),
    rows: Array.from(body.matchAll(/<tr[\s\S]*?<\/tr>/g), ([row]) => numbersIn(row)),
  };
}

test("there is a table for many arrangements", () => expect(effectivenessPages.length).toBeGreaterThan(25));

describe.each(effectivenessPages)("%s", (path) => {
  const html = read(fileOf(path)).toString();

  test("its file holds the numbers of its table, and says what it is", async () => {
    const [, link = ""] = /<a [^>]*href="([^"]+\.csv)"/.exec(html) ?? [];
    const answer = await fetch(address + link);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toContain("text/csv");
    const [names = "", ...lines] = (await answer.text()).trimEnd().split("\r\n");
    const columns = names.split(",");
    const filed = new Map(lines.map((line) => [Number(line.split(",")[0]), line.split(",").map(Number)]));
    const { R, rows } = tableIn(html);
    expect(R.length).toBeGreaterThan(5);
    expect(rows.length).toBeGreaterThan(10);
    for (const [NTU = Number.NaN, ...values] of rows) {
      expect(values).toHaveLength(R.length);
      values.forEach((value, i) => {
        const inFile = filed.get(NTU)?.[columns.indexOf(`P(R=${R[i]})`)] ?? Number.NaN;
        // Each is rounded on its own.
        expect(Math.abs(inFile - value)).toBeLessThanOrEqual(0.51e-4);
      });
    }
  });
});

const [largest = ""] = [...effectivenessPages].sort(
  (a, b) => read(fileOf(b)).length - read(fileOf(a)).length,
);

/** A plain one, one that peaks, and the one with the most on it. */
const some = [...["counterflow", "cross-mixed"].map((id) => `/tables/effectiveness/${id}/`), largest];

describe.each(some)("%s", (path) => {
  test("is whole without JavaScript", async () => {
    const page = await newVisitor({ javaScriptEnabled: false });
    await page.goto(path);
    const main = page.locator("main");
    expect(await main.locator("h1").innerText()).not.toBe("");
    for (const part of [".opening svg", ".eq .katex", ".fig svg", ".lookup", "a[download]"])
      expect(await main.locator(part).filter({ visible: true }).count(), part).toBeGreaterThan(0);
    expect(await main.innerText()).not.toMatch(notANumber);
  });

  test("prints on two sheets, with chart and table whole and no buttons", async () => {
    // The text of an A4 page at 96 px to the inch.
    const page = await newVisitor({ viewport: { width: 660, height: 970 } });
    await open(page, path);
    const paper = await page.pdf({ format: "A4", preferCSSPageSize: true });
    const sheets = paper.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? [];
    expect(sheets.length).toBeLessThanOrEqual(2);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".tools").filter({ visible: true }).count()).toBe(0);
    for (const part of await page.locator(".fig, .lookup").all()) {
      const box = await part.boundingBox();
      expect(box?.height).toBeLessThan(970);
      expect(box?.width).toBeLessThanOrEqual(660);
      expect(await part.evaluate((element) => getComputedStyle(element).breakInside)).toBe("avoid");
    }
  });

  test("keeps the NTU of a row in sight while the table scrolls on a phone", async () => {
    const page = await newVisitor({ viewport: { width: 390, height: 844 } });
    await open(page, path);
    const scroll = page.locator(".scroll:has(.lookup)");
    expect(await scroll.evaluate((element) => element.scrollWidth > element.clientWidth)).toBe(true);
    await scroll.evaluate((element) => element.scrollTo({ left: 1000 }));
    const header = await page.locator(".lookup tbody th").first().boundingBox();
    expect(header?.x).toBeGreaterThanOrEqual(0);
    expect(header?.x).toBeLessThan(40);
  });
});

test("people find an arrangement by another word for it", async () => {
  const page = await newVisitor();
  await open(page, "/tables/");
  await page.locator(".head [data-find]").click();
  await page.fill("#finder-query", "countercurrent");
  const links = page.locator("#finder ol a");
  await links.first().waitFor();
  const found = await links.evaluateAll((anchors) =>
    anchors.map((a) => new URL((a as HTMLAnchorElement).href).pathname),
  );
  expect(found).toContain("/tables/effectiveness/counterflow/");
});

/** Rows of comma-separated values; no field of ours holds a line break. */
const parsed = (text: string): readonly (readonly string[])[] =>
  text
    .trimEnd()
    .split("\r\n")
    .map((line) =>
      Array.from(line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g), ([, quoted, plain]) =>
        quoted === undefined ? (plain ?? "") : quoted.replaceAll('""', '"'),
      ),
    );

test("there is a reference table for each subject", () =>
  expect(referencePages.length).toBeGreaterThanOrEqual(10));

describe.each(referencePages)("%s", (path) => {
  const html = read(fileOf(path)).toString();
  const links = Array.from(html.matchAll(/<a [^>]*href="([^"]+\.csv)"/g), ([, link = ""]) => link);

  test("each of its tables has a file with as many rows, numbers throughout and units in its first line", async () => {
    const tables = Array.from(
      html.matchAll(/<table class="data lookup reference"[\s\S]*?<\/table>/g),
      ([table]) => table,
    );
    expect(links.length).toBe(tables.length);
    expect(tables.length).toBeGreaterThan(0);
    let measured = 0;
    for (const [i, link] of links.entries()) {
      const answer = await fetch(address + link);
      expect(answer.status).toBe(200);
      expect(answer.headers.get("content-type")).toContain("text/csv");
      const [head = [], ...rows] = parsed(await answer.text());
      expect(new Set(head).size).toBe(head.length);
      measured += head.filter((name) => /\[[^\]]+\]$/.test(name)).length;
      expect(rows.length).toBe((tables[i]?.match(/<th scope="row"/g) ?? []).length);
      for (const row of rows) {
        expect(row.length).toBe(head.length);
        row.forEach((field, column) => {
          if (/\[[^\]]+\]$/.test(head[column] ?? ""))
            expect(Number.isFinite(Number(field || "none"))).toBe(true);
          else expect(field).not.toBe("");
        });
      }
    }
    expect(measured).toBeGreaterThan(0);
  });

  test("is whole without JavaScript", async () => {
    const page = await newVisitor({ javaScriptEnabled: false });
    await page.goto(path);
    const main = page.locator("main");
    for (const part of ["h1", ".fig svg", ".reference", "a[download]"])
      expect(await main.locator(part).filter({ visible: true }).count(), part).toBeGreaterThan(0);
    expect(await main.innerText()).not.toMatch(notANumber);
  });

  test("scrolls in its own frame on the smallest phone, never the page", async () => {
    const page = await newVisitor({ viewport: { width: 320, height: 640 } });
    await open(page, path);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    for (const scroll of await page.locator(".scroll:has(.reference)").all()) {
      await scroll.evaluate((element) => element.scrollTo({ left: 2000 }));
      const header = await scroll.locator("tbody th[scope=row]").first().boundingBox();
      expect(header?.x).toBeGreaterThanOrEqual(0);
      expect(header?.x).toBeLessThan(40);
    }
  });

  test("prints within the width of A4, its head on each page that it reaches", async () => {
    const page = await newVisitor({ viewport: { width: 660, height: 970 } });
    await open(page, path);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".tools").filter({ visible: true }).count()).toBe(0);
    for (const table of await page.locator(".reference").all()) {
      const box = await table.boundingBox();
      expect(box?.width).toBeLessThanOrEqual(660);
      const { display, breakInside } = await table.evaluate((element) => ({
        display: getComputedStyle(element.querySelector("thead") as Element).display,
        breakInside: getComputedStyle(element).breakInside,
      }));
      expect(display).toBe("table-header-group");
      // What is kept whole has to fit.
      if (breakInside === "avoid") expect(box?.height).toBeLessThan(970);
    }
  });
});

test("every file below the tables belongs to a page", () => {
  const linked = [...effectivenessPages, ...referencePages].flatMap((path) =>
    Array.from(
      read(fileOf(path))
        .toString()
        .matchAll(/href="([^"]+\.csv)"/g),
      ([, link = ""]) => link,
    ),
  );
  const filed = files.filter((file) => file.startsWith("/tables/") && file.endsWith(".csv"));
  expect([...linked].sort()).toEqual(filed);
});

test.each([
  ["psychrometric", "/tables/moist-air/"],
  ["boiling point", "/tables/boiling/"],
  ["salt water", "/tables/seawater/"],
  ["elbow loss", "/tables/loss-coefficients/"],
  ["horsepower", "/tables/conversions/"],
  ["gasoline", "/tables/fuels/"],
  ["ISA", "/tables/standard-atmosphere/"],
])("people find by %s the table of it", async (query, path) => {
  const page = await newVisitor();
  await open(page, "/tables/");
  await page.locator(".head [data-find]").click();
  await page.fill("#finder-query", query);
  await page.waitForFunction(
    (text) => document.querySelector("#finder")?.getAttribute("data-shown") === text,
    query,
  );
  const found = await page
    .locator("#finder ol a")
    .evaluateAll((anchors) => anchors.map((a) => new URL((a as HTMLAnchorElement).href).pathname));
  expect(found).toContain(path);
});
