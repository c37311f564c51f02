import { describe, expect, test } from "vitest";
import { lessonPages } from "./dist.ts";
import { field, newVisitor, open, parse, resultsOf } from "./site.ts";

describe.each(["/numbers/charge-path/", ...lessonPages])("%s on paper", (path) => {
  test("has the values, and no controls", async () => {
    // The text of an A4 page at 96 px to the inch.
    const page = await newVisitor({ viewport: { width: 660, height: 980 } });
    await open(page, path);
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    // A word that opens its meaning is printed as the word that it is.
    const controls = page.locator(".tools, .index, .foot nav, .head .on-screen, button:not(.term), .find");
    expect(await controls.filter({ visible: true }).allTextContents()).toEqual([]);
    const results = page.locator("[data-result]").filter({ visible: true });
    expect(await results.count()).toBeGreaterThan(0);
    for (const text of await results.allTextContents()) expect(parse(text), text).not.toBeNaN();
    const [paper] = await page
      .locator("body")
      .evaluateAll(([body]) => [body && getComputedStyle(body).backgroundColor]);
    expect(["rgb(255, 255, 255)", "rgba(0, 0, 0, 0)"]).toContain(paper);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
  });
});

test("what was typed is on the paper, with its unit", async () => {
  const page = await newVisitor({ viewport: { width: 660, height: 980 } });
  await open(page, "/numbers/charge-path/");
  await field(page, "charge-path", "r").fill("1.8");
  await page.emulateMedia({ media: "print" });
  const entry = field(page, "charge-path", "V_d");
  expect(await entry.isVisible()).toBe(true);
  expect(await entry.locator("xpath=..").locator(".unit").isVisible()).toBe(true);
  expect(await field(page, "charge-path", "r").inputValue()).toBe("1.8");
  expect(Object.keys(await resultsOf(page, "charge-path"))).toContain("rho_m");
});

test("it prints to a document of a few pages", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  const paper = await page.pdf({ preferCSSPageSize: true });
  const sheets = paper.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? [];
  expect(sheets.length).toBeGreaterThan(0);
  expect(sheets.length).toBeLessThan(8);
});
