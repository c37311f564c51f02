import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { newVisitor, open } from "./site.ts";

/** Types a query into the open search, and waits for addresses that it leads to. */
async function find(page: Page, query: string): Promise<readonly string[]> {
  const finder = page.locator("#finder");
  await finder.locator("#finder-query").fill(query);
  const links = finder.locator("ol a");
  await links.first().waitFor();
  return links.evaluateAll((anchors) => anchors.map((a) => new URL((a as HTMLAnchorElement).href).pathname));
}

test("Find opens the search, and a word finds the lesson on it", async () => {
  const page = await newVisitor();
  await open(page, "/");
  await page.locator(".head [data-find]").click();
  await page.locator("#finder input:focus").waitFor();
  expect(await find(page, "density")).toContain("/lessons/charge-density/");
});

test("Ctrl+K and / open it anywhere, Escape closes it", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  for (const key of ["Control+k", "/"]) {
    await page.keyboard.press(key);
    await page.locator("#finder[open]").waitFor();
    await page.keyboard.press("Escape");
    await page.locator("#finder:not([open])").waitFor({ state: "attached" });
  }
});

test("/ in a field is a slash", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  await page.fill("#charge-path-r", "");
  await page.locator("#charge-path-r").press("/");
  expect(await page.inputValue("#charge-path-r")).toBe("/");
  expect(await page.locator("#finder[open]").count()).toBe(0);
});

test("the form of the home page takes its text along", async () => {
  const page = await newVisitor();
  await open(page, "/");
  await page.fill("#find", "barometer");
  await page.keyboard.press("Enter");
  await page.locator("#finder ol a").first().waitFor();
  expect(await page.inputValue("#finder-query")).toBe("barometer");
});

test("what is not there is said", async () => {
  const page = await newVisitor();
  await open(page, "/");
  await page.locator(".head [data-find]").click();
  await page.fill("#finder-query", "xylophone");
  const says = page.locator("#finder [role=status]");
  await says.filter({ hasText: /\S/ }).waitFor();
  expect(await says.innerText()).toMatch(/^Nothing has “xylophone”/);
  expect(await page.locator("#finder ol a").count()).toBe(0);
});

/** What stands in the list of what was found, once it answers this query. */
async function found(page: Page, query: string) {
  await page.fill("#finder-query", query);
  await page.waitForFunction(
    (text) => document.querySelector("#finder")?.getAttribute("data-shown") === text,
    query,
  );
  return page.locator("#finder > ol > li").evaluateAll((items) =>
    items.map((item) => ({
      title: item.querySelector("a")?.textContent ?? "",
      kind: item.querySelector(".kind")?.textContent ?? "",
      excerpt: item.querySelector("p")?.textContent ?? "",
    })),
  );
}

async function openedFinder(): Promise<Page> {
  const page = await newVisitor({ viewport: { width: 390, height: 844 } });
  await open(page, "/");
  await page.locator(".head [data-find]").click();
  return page;
}

test("a kind that is pressed is shown alone, and pressed again all are", async () => {
  const page = await openedFinder();
  expect(new Set((await found(page, "density")).map(({ kind }) => kind)).size).toBeGreaterThan(3);
  const lesson = page.locator("#finder .kinds button", { hasText: /^Lesson/ });
  await lesson.focus();
  await page.keyboard.press("Enter");
  await page.locator("#finder .kinds [aria-pressed=true]").waitFor();
  const kinds = page.locator("#finder .kind");
  expect(new Set(await kinds.allInnerTexts())).toEqual(new Set(["Lesson"]));
  expect(await lesson.evaluate((button) => button === document.activeElement)).toBe(true);
  await page.keyboard.press("Enter");
  await page.locator("#finder .kinds [aria-pressed=true]").waitFor({ state: "detached" });
  expect(new Set(await kinds.allInnerTexts()).size).toBeGreaterThan(3);
});

test.each([
  ["ρ", /^ρ/],
  ["rho", /^ρ/],
  ["T_2", /^T_2, temperature at the compressor outlet/],
  ["T2", /^T_2, temperature at the compressor outlet/],
  ["NTU", /^NTU/],
])("the symbol %s is found", async (query, title) => {
  const page = await openedFinder();
  const symbols = (await found(page, query)).filter(({ kind }) => kind === "Symbol");
  expect(symbols.map((one) => one.title)).toContainEqual(expect.stringMatching(title));
});

test.each([
  ["intercooler", ["Calculator", "Quick answer", "Lesson", "Term"]],
  ["boost gauge", ["Quick answer"]],
  ["how hot after turbo", ["Quick answer", "Lesson"]],
  ["water in intake", ["Calculator"]],
  ["psi to bar", ["Quick answer"]],
])("what people type, %s, finds something of each kind that answers it", async (query, kinds) => {
  const page = await openedFinder();
  const seen = (await found(page, query)).map(({ kind }) => kind);
  for (const kind of kinds) expect(seen).toContain(kind);
});

test("excerpts are sentences without the remains of formulas", async () => {
  const page = await openedFinder();
  const debris = /\\|[{}]|\$|�|\bNaN\b|\d{9,}|,\s+,|\(\s*\)|\b(is|and|of|with) [,.;]/;
  for (const query of ["density", "effectiveness", "condensation", "Reynolds", "hose", "dew", "ratio"]) {
    const entries = await found(page, query);
    expect(entries.length).toBeGreaterThan(0);
    expect(
      entries.map(({ excerpt }) => excerpt).filter((text) => debris.test(text)),
      query,
    ).toEqual([]);
  }
});

test("the arrows lead through what was found, and Escape gives the focus back", async () => {
  const page = await openedFinder();
  await found(page, "density");
  const at = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");
  await page.locator("#finder-query").focus();
  await page.keyboard.press("ArrowDown");
  const first = await at();
  expect(first).not.toBe("");
  await page.keyboard.press("ArrowDown");
  expect(await at()).not.toBe(first);
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("finder-query");
  await page.keyboard.press("Escape");
  expect(await page.evaluate(() => document.activeElement?.hasAttribute("data-find"))).toBe(true);
});
