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
  expect(await page.locator("#finder input").evaluate((input) => input === document.activeElement)).toBe(
    true,
  );
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
