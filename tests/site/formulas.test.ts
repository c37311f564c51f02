import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { slanted, upright } from "../../src/fonts/characters.ts";
import { files, pages, read } from "./dist.ts";
import { newVisitor, open } from "./site.ts";

/** Formulas that are wider than the column they stand in, with everything unfolded. */
const tooWide = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
    const isBlock = (element: Element) => !getComputedStyle(element).display.startsWith("inline");
    return [...document.querySelectorAll("main .katex")].flatMap((formula) => {
      let column = formula.parentElement;
      while (column && !isBlock(column)) column = column.parentElement;
      if (!column || !formula.checkVisibility()) return [];
      const { right, left, width } = formula.getBoundingClientRect();
      const room = column.getBoundingClientRect();
      const scrolls =
        getComputedStyle(column).overflowX !== "visible" && column.scrollWidth > column.clientWidth;
      if (right <= room.right + 1 && left >= room.left - 1 && !scrolls) return [];
      const what =
        column.closest("[data-relation]")?.getAttribute("data-relation") ?? formula.textContent?.slice(0, 60);
      return [`${what}: ${Math.round(width)} px in ${Math.round(room.width)} px`];
    });
  });

/** What reaches past the right edge of a page that scrolls sideways. */
const sideways = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
    const root = document.documentElement;
    if (root.scrollWidth <= root.clientWidth) return "";
    const over = [...document.querySelectorAll("body *")].filter(
      (e) => e.checkVisibility() && e.getBoundingClientRect().right > root.clientWidth + 1,
    );
    return `${root.scrollWidth} px in ${root.clientWidth}: ${over
      .slice(0, 3)
      .map((element) => element.outerHTML.slice(0, 120))
      .join(" ")}`;
  });

describe.each(pages)("%s", (path) => {
  test("no formula is wider than its column at 390 px, and the page does not scroll sideways at 390 or 320", async () => {
    const page = await newVisitor({ viewport: { width: 390, height: 844 } });
    await open(page, path);
    expect([...new Set(await tooWide(page))].join("\n")).toBe("");
    expect(await sideways(page)).toBe("");
    await page.setViewportSize({ width: 320, height: 844 });
    expect(await sideways(page)).toBe("");
  });
});

test("no step that a calculator may fetch is wider than its column at 390 px", async () => {
  const steps = files
    .filter((file) => /^\/working\/.*\.html$/.test(file))
    .map((file) => read(file).toString());
  expect(steps.join("").match(/ data-relation="/g)?.length).toBeGreaterThan(100);
  const page = await newVisitor({ viewport: { width: 390, height: 844 } });
  await open(page, "/numbers/cooler-rating/");
  await page.evaluate((html) => {
    const list = document.querySelector("ol.steps");
    if (!list) throw new Error("no working");
    for (const one of html) {
      const parsed = new DOMParser().parseFromString(one, "text/html");
      for (const slot of parsed.querySelectorAll("[data-slot]")) slot.textContent = "287.04";
      list.append(...parsed.querySelectorAll("[data-relation]"));
    }
  }, steps);
  expect([...new Set(await tooWide(page))].join("\n")).toBe("");
});

test("steps that are fetched bring the rules of their formulas", async () => {
  const page = await newVisitor({ viewport: { width: 1000, height: 900 } });
  await open(page, "/numbers/control-valve/");
  const sheets = () => page.evaluate(() => [...document.styleSheets].map(({ href }) => href ?? ""));
  const atFirst = await sheets();
  await page.locator("#control-valve details.work > summary").click();
  await page.locator("#control-valve-fittings").selectOption("reducers");
  await page.locator('[data-relation="circuit/valve/fittings-sum"]').first().waitFor();
  expect((await sheets()).length).toBeGreaterThan(atFirst.length);
  const without = await page.evaluate(() => {
    const rules = [...document.styleSheets]
      .flatMap(({ cssRules }) => [...cssRules].map(({ cssText }) => cssText))
      .join("\n");
    const names = [...document.querySelectorAll(".step .katex-html span")].flatMap((span) =>
      [...span.classList].filter((name) => /^k[0-9a-z]{1,3}$/.test(name)),
    );
    return { count: names.length, without: names.filter((name) => !rules.includes(`.katex .${name} {`)) };
  });
  expect(without.count).toBeGreaterThan(100);
  expect(without.without).toEqual([]);
});

test("the faces of formulas hold every letter and sign that formulas use", () => {
  // Powers in a working are written with signs of the text's own face.
  const ofText = "⁰⁴⁵⁶⁷⁸⁹⁻\u200b\u2009\u202f";
  const lacking = new Set<string>();
  for (const file of files.filter((one) => one.endsWith(".html"))) {
    const html = read(file)
      .toString()
      .replaceAll(/<span class="katex-mathml">[\s\S]*?<\/math><\/span>/g, "");
    for (const [, names = "", text = ""] of html.matchAll(/<span class="([^"]*)"[^>]*>([^<]+)/g)) {
      const classes = names.split(" ");
      if (!classes.some((name) => /^(?:m(?:ord|bin|rel|open|close|punct|op|inner)|accent-body)$/.test(name)))
        continue;
      const face = classes.includes("mathnormal") ? slanted : upright + ofText;
      for (const character of text.replaceAll(/&[a-z#0-9]+;/g, ""))
        if (!face.includes(character)) lacking.add(`${character} in ${file}`);
    }
  }
  expect([...lacking]).toEqual([]);
});
