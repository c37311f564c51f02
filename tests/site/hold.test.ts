import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { violationsOf } from "./axe.ts";
import { calculatorOn, choose, field, newVisitor, open, resultsOf, sizes } from "./site.ts";

const id = "charge-path";

/** A visitor who has held a state by keyboard. */
async function visitorHolding(viewport = { width: 1440, height: 900 }): Promise<Page> {
  const page = await newVisitor({ viewport });
  await open(page, `/numbers/${id}/`);
  await field(page, id, "r").fill("2");
  await page.getByRole("button", { name: "Hold these numbers" }).focus();
  await page.keyboard.press("Enter");
  await page.locator("[role=status]", { hasText: "Numbers held." }).waitFor();
  return page;
}

const saidOf = (page: Page, result: string) =>
  calculatorOn(page, id).locator(`div:has(> dd > [data-result="${result}"]) .says`, { hasText: "Held:" });

const plain = (text: string) => text.replaceAll("\u00a0", " ");

test("each result says what it was and how it differs, each input what it was", async () => {
  const page = await visitorHolding();
  expect(await saidOf(page, "p_2").innerText()).toBe("Held: the same.");
  await field(page, id, "r").fill("2.5");
  await saidOf(page, "p_2").filter({ hasText: "+25" }).waitFor();
  expect(plain(await saidOf(page, "p_2").innerText())).toMatch(
    /^Held: 198\.0 kPa\. Now \+49\.5 kPa, \+25 %\.$/,
  );
  // Temperature on a scale has no part.
  expect(plain(await saidOf(page, "T_2").innerText())).toMatch(/^Held: [\d.]+ °C\. Now \+[\d.]+ K\.$/);
  expect(plain(await page.locator(`[id="${id}-r-msg"]`).innerText())).toContain("Held: 2.000.");
  expect(await page.locator(`[id="${id}-eta_s-msg"]`).getByText("Held:").count()).toBe(0);
  await choose(page, id, "cooler", "none");
  expect(await page.locator(`[id="${id}-cooler-msg"]`).innerText()).toMatch(/^Held: /);
});

test("swapped by keyboard the held state stands, and the other is held; let go, all of it is gone", async () => {
  const page = await visitorHolding();
  const first = await resultsOf(page, id);
  await field(page, id, "r").fill("2.5");
  await field(page, id, "p_0").fill("95");
  const second = await resultsOf(page, id);
  await page.getByRole("button", { name: "Swap with those held" }).press("Enter");
  await expect.poll(() => resultsOf(page, id)).toEqual(first);
  expect(await field(page, id, "r").inputValue()).toBe("2");
  expect(plain(await page.locator(`[id="${id}-r-msg"]`).innerText())).toContain("Held: 2.500.");
  await page.getByRole("button", { name: "Swap with those held" }).press("Enter");
  await expect.poll(() => resultsOf(page, id)).toEqual(second);
  const button = page.getByRole("button", { name: "Let go" });
  await button.press("Enter");
  expect(await calculatorOn(page, id).getByText("Held:").count()).toBe(0);
  // The button stays, and the focus on it.
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Hold these numbers");
});

test("what is held outlives a reload", async () => {
  const page = await visitorHolding();
  await field(page, id, "r").fill("2.5");
  await page.waitForFunction(() => location.hash.includes("2.5"));
  await page.reload();
  await saidOf(page, "p_2").filter({ hasText: "+25" }).waitFor();
  await page.getByRole("button", { name: "Let go" }).click();
  await page.reload();
  await page.getByRole("button", { name: "Hold these numbers" }).waitFor();
  expect(await calculatorOn(page, id).getByText("Held:").count()).toBe(0);
});

test("with something that cannot be used it still says what was held", async () => {
  const page = await visitorHolding();
  await field(page, id, "r").fill("rubbish");
  expect(plain(await saidOf(page, "p_2").innerText())).toBe("Held: 198.0 kPa.");
  expect(await page.getByRole("button", { name: "Swap with those held" }).isDisabled()).toBe(true);
  expect(plain(await page.locator(`[id="${id}-r-msg"]`).innerText())).toContain("Held: 2.000.");
});

describe.each(sizes)("at $width", (viewport) => {
  test("it fits, and has no violation", async () => {
    const page = await visitorHolding(viewport);
    await field(page, id, "r").fill("2.5");
    await saidOf(page, "p_2").filter({ hasText: "+25" }).waitFor();
    const isWider = () => document.documentElement.scrollWidth > document.documentElement.clientWidth;
    expect(await page.evaluate(isWider)).toBe(false);
    expect(await violationsOf(page, `[data-calculator="${id}"]`)).toEqual([]);
  });
});

test("on paper the difference is printed, and the buttons are not", async () => {
  const page = await visitorHolding();
  await field(page, id, "r").fill("2.5");
  await saidOf(page, "p_2").filter({ hasText: "+25" }).waitFor();
  await page.emulateMedia({ media: "print" });
  expect(await saidOf(page, "p_2").isVisible()).toBe(true);
  expect(await page.locator(".tools").isVisible()).toBe(false);
});
