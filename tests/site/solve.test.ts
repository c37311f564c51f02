import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { choose, field, newVisitor, notANumber, open, parse, resultsOf, sizes } from "./site.ts";

const id = "charge-path";
/** Answers come once typing rests, on a busy machine later. */
const wait = { timeout: 20_000 };
const fold = (page: Page) => page.locator(".back > summary");
const wanted = (page: Page) => field(page, id, "want");
const held = (page: Page) => page.locator(`button[id="${id}-want-held"]`);
const solved = (page: Page) => page.locator(".solved");

/** Opens the panel, and asks which input gives a result. */
async function ask(page: Page, result: string, value: string, input: string): Promise<void> {
  if (!(await wanted(page).isVisible())) await fold(page).click();
  await choose(page, id, "want-result", result);
  await wanted(page).fill(value);
  await choose(page, id, "want-input", input);
  await solved(page).waitFor();
}

/** Makes a choice in the list that has the focus. */
async function arrowTo(page: Page, option: string): Promise<void> {
  const chosen = () => page.evaluate(() => (document.activeElement as HTMLSelectElement).value);
  await page.keyboard.press("Home");
  for (let i = 0; i < 60 && (await chosen()) !== option; i++) await page.keyboard.press("ArrowDown");
  expect(await chosen()).toBe(option);
}

const shownOf = async (page: Page, result: string): Promise<number> =>
  parse((await resultsOf(page, id))[result] ?? "");

test("by keyboard alone a result is asked for and its field is filled", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await fold(page).focus();
  await page.keyboard.press("Enter");
  await wanted(page).waitFor();
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe(`${id}-want-result`);
  await arrowTo(page, "rho_m");
  await page.keyboard.press("Tab");
  await page.keyboard.type("2.4");
  await page.keyboard.press("Tab");
  // Past its unit.
  await page.keyboard.press("Tab");
  await arrowTo(page, "r");
  await expect.poll(() => solved(page).innerText(), wait).toMatch(/^One value does/);
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Use /);
  await page.keyboard.press("Enter");
  await expect.poll(() => shownOf(page, "rho_m"), wait).toBe(2.4);
  expect(Number(await field(page, id, "r").inputValue())).toBeGreaterThan(1.5);
  // The focus stays where it was, and what happened is said.
  expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Use /);
  const told = await page.locator(".back [role=status]").allInnerTexts();
  expect(told.join(" ")).toMatch(/is written into “Pressure ratio”/);
});

test("a held result stays while other fields change, until its field is typed into", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await choose(page, id, "cooler", "effectiveness");
  await ask(page, "rho_m", "2.3", "r");
  await held(page).click();
  await expect.poll(() => shownOf(page, "rho_m"), wait).toBe(2.3);
  const first = await field(page, id, "r").inputValue();
  await field(page, id, "T_0").fill("38");
  await expect.poll(() => field(page, id, "r").inputValue(), wait).not.toBe(first);
  await expect.poll(() => shownOf(page, "rho_m"), wait).toBe(2.3);
  expect(await page.locator(`[id="${id}-r-msg"]`).innerText()).toContain(
    "Found so that “Density in the manifold” is 2.3 kg/m³.",
  );

  await field(page, id, "r").fill("2");
  expect(await held(page).innerText()).toMatch(/^Keep/);
  expect(await page.locator(`[id="${id}-r-msg"]`).innerText()).not.toContain("so that");
  await field(page, id, "T_0").fill("20");
  await page.waitForTimeout(800);
  expect(await field(page, id, "r").inputValue()).toBe("2");
});

test("a link carries what is wanted, held or not", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await ask(page, "rho_m", "2.3", "r");
  await held(page).click();
  await expect.poll(() => page.url(), wait).toMatch(/want=rho_m;r;2\.3;kg\/m3;held/);
  await expect.poll(() => shownOf(page, "rho_m"), wait).toBe(2.3);
  await page.waitForTimeout(500);
  const ratio = await field(page, id, "r").inputValue();

  const other = await newVisitor();
  await open(other, page.url());
  await solved(other).waitFor();
  expect(await wanted(other).inputValue()).toBe("2.3");
  expect(await held(other).innerText()).toMatch(/^Stop/);
  expect(await field(other, id, "r").inputValue()).toBe(ratio);
  await field(other, id, "Delta_p_01").fill("4");
  await expect.poll(() => field(other, id, "r").inputValue(), wait).not.toBe(ratio);
  await expect.poll(() => shownOf(other, "rho_m"), wait).toBe(2.3);
});

test("what cannot be reached is answered with the nearest, and why", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await ask(page, "rho_m", "1e6", "r");
  await expect
    .poll(() => solved(page).innerText(), wait)
    .toMatch(/^No value from .+ does\. The most that is reached is/);
  expect(await page.locator(".back button").filter({ hasText: /^Use/ }).count()).toBe(0);
  const before = await field(page, id, "r").inputValue();
  await held(page).click();
  await page.waitForTimeout(600);
  expect(await field(page, id, "r").inputValue()).toBe(before);
  expect(await page.locator(`[id="${id}-r-msg"]`).innerText()).toContain("Sought so that");
});

test("rubbish in the wanted field gets a sentence, and nothing is lost", async () => {
  const page = await newVisitor();
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  await open(page, `/numbers/${id}/`);
  await ask(page, "rho_m", "2.3", "r");
  const results = await resultsOf(page, id);
  for (const text of [
    "2,3,4",
    "a lot",
    "3 kPa",
    "1e999",
    "(((",
    "<b>2</b>",
    "−0",
    "0",
    "1 / 0",
    "constructor",
  ]) {
    await wanted(page).fill(text);
    await page.waitForTimeout(300);
    const panel = await page.locator(".back").innerText();
    expect(panel.replace(/“[^”]*”/g, ""), text).not.toMatch(notANumber);
    const isRefused = (await wanted(page).getAttribute("aria-invalid")) === "true";
    const says = isRefused
      ? await page.locator(`[id="${id}-want-msg"]`).innerText()
      : await solved(page).innerText();
    expect(says.trim(), text).toMatch(/\.$/);
    expect(await wanted(page).inputValue()).toBe(text);
  }
  expect(await resultsOf(page, id)).toEqual(results);
  expect(errors).toEqual([]);
});

test("where another field cannot be used, it says so and goes on afterwards", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await ask(page, "rho_m", "2.3", "r");
  await field(page, id, "V_d").fill("rubbish");
  await expect.poll(() => solved(page).innerText(), wait).toMatch(/^Another field cannot be used/);
  await field(page, id, "V_d").fill("4");
  await expect.poll(() => solved(page).innerText(), wait).toMatch(/^One value does/);
});

test("the barometer is never found", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await fold(page).click();
  const offered = page.locator(`select[id="${id}-want-input"] option`);
  await offered.first().waitFor({ state: "attached" });
  expect(
    await offered.evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value)),
  ).not.toContain("p_0");
});

test("a part of a calculator in a lesson is not asked backwards", async () => {
  const page = await newVisitor();
  await open(page, "/quick/boost-ratio/");
  expect(await page.locator(".back").count()).toBe(0);
});

describe.each(sizes)("at $width px", (viewport) => {
  test("the panel fits, with a long answer in it", async () => {
    const page = await newVisitor({ viewport });
    await open(page, `/numbers/${id}/`);
    await ask(page, "rho_m", "1e6", "r");
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBeLessThanOrEqual(0);
    const small = await page
      .locator(".back :is(select, button, input, summary)")
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML),
      );
    expect(small).toEqual([]);
  });
});

test("on paper the panel stands only where it is held, without its controls", async () => {
  const page = await newVisitor({ viewport: { width: 660, height: 980 } });
  await open(page, `/numbers/${id}/`);
  await ask(page, "rho_m", "2.3", "r");
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".back").isVisible()).toBe(false);
  await page.emulateMedia({ media: "screen" });
  await held(page).click();
  await page.emulateMedia({ media: "print" });
  expect(await wanted(page).isVisible()).toBe(true);
  expect(await page.locator(".back :is(button)").filter({ visible: true }).count()).toBe(0);
});

test("without JavaScript it is not offered", async () => {
  const page = await newVisitor({ javaScriptEnabled: false });
  await page.goto(`/numbers/${id}/`);
  expect(await page.locator(".back").isVisible()).toBe(false);
});
