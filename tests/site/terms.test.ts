import { describe, expect, test } from "vitest";
import { lessonPages } from "./dist.ts";
import { newVisitor, open } from "./site.ts";

const phone = { width: 390, height: 700 };
const opened = ".meaning:popover-open";

describe.each(lessonPages)("the terms of %s", (path) => {
  test.each([true, false])("open by a click and close again, scripts: %s", async (javaScriptEnabled) => {
    const page = await newVisitor({ viewport: phone, javaScriptEnabled });
    await page.goto(path);
    const terms = await page.locator(".term").filter({ visible: true }).all();
    expect(terms.length).toBeGreaterThan(0);
    for (const term of terms) {
      const word = await term.innerText();
      await term.click();
      const meaning = page.locator(opened);
      expect(await meaning.count(), word).toBe(1);
      expect((await meaning.innerText()).length, word).toBeGreaterThan(word.length + 20);
      const [of, at] = [await term.boundingBox(), await meaning.boundingBox()];
      if (!of || !at) throw new Error(`“${word}” opens nothing that is in sight.`);
      expect(at.x, word).toBeGreaterThanOrEqual(0);
      expect(at.x + at.width, word).toBeLessThanOrEqual(phone.width);
      expect(at.y, word).toBeGreaterThanOrEqual(0);
      expect(at.y + at.height, word).toBeLessThanOrEqual(phone.height);
      expect(at.width, word).toBeGreaterThan(200);
      await page.keyboard.press("Escape");
      expect(await meaning.count(), word).toBe(0);
    }
  });
});

test("a term opens by the keyboard, leads to the glossary, and gives the focus back", async () => {
  const page = await newVisitor();
  await open(page, "/lessons/pressures/");
  const term = page.locator(".term").first();
  await term.focus();
  await page.keyboard.press("Enter");
  await page.locator(opened).waitFor();
  await page.keyboard.press("Escape");
  expect(await page.locator(opened).count()).toBe(0);
  expect(await term.evaluate((one) => document.activeElement === one)).toBe(true);
  await page.keyboard.press("Space");
  await page.keyboard.press("Tab");
  const href = await page.evaluate(() => document.activeElement?.getAttribute("href"));
  expect(href).toMatch(/^\/glossary\/#/);
  await page.keyboard.press("Enter");
  await page.waitForURL(`**${href}`);
  expect(await page.locator(new URL(page.url()).hash).isVisible()).toBe(true);
});

test("an open meaning does not lie over the text on paper", async () => {
  const page = await newVisitor();
  await open(page, "/lessons/pressures/");
  const term = page.locator(".term").first();
  await term.click();
  expect(await page.locator(opened).isVisible()).toBe(true);
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".meaning").filter({ visible: true }).count()).toBe(0);
  expect(await term.isVisible()).toBe(true);
});
