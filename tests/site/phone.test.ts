import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { violations } from "./axe.ts";
import { quickPages } from "./dist.ts";
import { calculatorOn, field, newVisitor, open, parse, resultsOf } from "./site.ts";

/** The window that an open keyboard leaves. */
const overKeyboard = { width: 390, height: 360 };
const finger = { hasTouch: true, isMobile: true } as const;
const onPhone = () => newVisitor({ viewport: overKeyboard, ...finger });

const charge = "/numbers/charge-path/";
const key = (page: Page, name: string): Locator => page.locator(".keys").getByRole("button", { name });
const strip = (page: Page): Locator => page.locator(".pinned > div");
const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? "");
const drawn = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

const box = (one: Locator) =>
  one.evaluate((element) => {
    const { top, bottom, left, right, width, height } = element.getBoundingClientRect();
    return { top, bottom, left, right, width, height };
  });

/** Touches a field of the charge path, and waits for what a finger gets. */
async function touch(page: Page, id: string): Promise<Locator> {
  const input = field(page, "charge-path", id);
  await input.tap();
  await page.locator(".field", { has: input }).locator(".keys").waitFor();
  return input;
}

describe("phone keypad at 390 × 360", () => {
  test("the decimal keypad lacks nothing: steps, sign, unit, and back", async () => {
    const page = await onPhone();
    await open(page, charge);
    const ratio = await touch(page, "r");
    expect(await ratio.getAttribute("inputmode")).toBe("decimal");
    expect(await key(page, "Change the sign").count()).toBe(0);
    const before = await resultsOf(page, "charge-path");
    await ratio.fill("2.2");
    await key(page, "A step up").tap();
    expect(await ratio.inputValue()).toBe("2.22");
    await key(page, "A step down").tap();
    await key(page, "A step down").tap();
    expect(await ratio.inputValue()).toBe("2.18");
    expect(await focused(page)).toBe("charge-path-r");
    expect((await resultsOf(page, "charge-path"))["rho_m"]).not.toBe(before["rho_m"]);

    const warmth = await touch(page, "T_0");
    expect(await page.locator(".keys").count()).toBe(1);
    expect(await warmth.getAttribute("inputmode")).toBe("decimal");
    await warmth.fill("12.5");
    await key(page, "Change the sign").tap();
    expect(await warmth.inputValue()).toBe("-12.5");
    expect(await warmth.getAttribute("aria-invalid")).toBe("false");
    await key(page, "Change the sign").tap();
    expect(await warmth.inputValue()).toBe("12.5");
    expect(await focused(page)).toBe("charge-path-T_0");

    await page.getByLabel("Unit of ambient temperature").selectOption("degF");
    expect(parse(await warmth.inputValue())).toBeCloseTo(54.5, 6);
    await warmth.tap();
    await key(page, "A step up").tap();
    expect(await warmth.inputValue()).toBe("55");
    expect(await page.getByLabel("Unit of ambient temperature").inputValue()).toBe("degF");
  });

  test("the way to letters and back", async () => {
    const page = await onPhone();
    await open(page, charge);
    const pressure = await touch(page, "p_0");
    const letters = key(page, "Calculate");
    expect(await letters.getAttribute("aria-pressed")).toBe("false");
    const narrow = await box(pressure);
    await letters.tap();
    expect(await letters.getAttribute("aria-pressed")).toBe("true");
    expect(await pressure.getAttribute("inputmode")).toBe("text");
    expect(await focused(page)).toBe("charge-path-p_0");
    expect((await box(pressure)).width).toBeGreaterThan(narrow.width + 100);
    await pressure.fill("14.7 psi − 3/8 psi");
    const says = page.locator("#charge-path-p_0-msg");
    expect(await says.innerText()).toMatch(/^Read as 98\.767\skPa/);
    await drawn(page);
    const [said, pinned] = [await box(says), await box(strip(page))];
    expect(said.top).toBeGreaterThan(0);
    expect(said.bottom).toBeLessThanOrEqual(pinned.top);
    await letters.tap();
    expect(await pressure.getAttribute("inputmode")).toBe("decimal");
    expect(await pressure.inputValue()).toBe("14.7 psi − 3/8 psi");
  });

  test("a key that is held goes on, and stops at the bound", async () => {
    const page = await onPhone();
    await open(page, charge);
    const ratio = await touch(page, "r");
    await ratio.fill("1.08");
    const down = key(page, "A step down");
    await down.dispatchEvent("pointerdown", { pointerType: "touch" });
    await expect.poll(() => ratio.inputValue(), { timeout: 10_000 }).toBe("1");
    await expect.poll(() => down.getAttribute("aria-disabled")).toBe("true");
    await down.dispatchEvent("pointerup", { pointerType: "touch" });
    expect(await ratio.getAttribute("aria-invalid")).toBe("false");
    const up = key(page, "A step up");
    await up.dispatchEvent("pointerdown", { pointerType: "touch" });
    await up.dispatchEvent("pointerup", { pointerType: "touch" });
    await page.waitForTimeout(700);
    expect(await ratio.inputValue()).toBe("1.01");
    // A screen reader clicks without a finger.
    await page.waitForTimeout(100);
    await up.dispatchEvent("click");
    expect(await ratio.inputValue()).toBe("1.02");
  });

  test.each(["", "rubbish", "2..2", "1/0"])("“%s” stays as it is: there is no step from it", async (text) => {
    const page = await onPhone();
    await open(page, charge);
    const ratio = await touch(page, "r");
    await ratio.fill(text);
    const says = await page.locator("#charge-path-r-msg").innerText();
    for (const name of ["A step up", "A step down"]) {
      expect(await key(page, name).getAttribute("aria-disabled")).toBe("true");
      await key(page, name).tap({ force: true });
    }
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Shift+ArrowDown");
    await drawn(page);
    expect(await ratio.inputValue()).toBe(text);
    expect(await page.locator("#charge-path-r-msg").innerText()).toBe(says);
    expect(await focused(page)).toBe("charge-path-r");
  });

  test("the answer stands above the keyboard, says whether it is current, and takes no room", async () => {
    const page = await onPhone();
    await open(page, charge);
    await page.evaluate(() => document.fonts.ready);
    const ratio = await touch(page, "r");
    await drawn(page);
    const pinned = await box(strip(page));
    expect(pinned.bottom).toBeCloseTo(overKeyboard.height, 0);
    expect(pinned.height).toBeLessThan(90);
    const shown = strip(page).locator("output");
    const answer = calculatorOn(page, "charge-path").locator(".get output").first();
    expect(await shown.textContent()).toBe(await answer.textContent());
    expect(await strip(page).innerText()).not.toContain("Not current.");
    await ratio.fill("2.5");
    expect(await shown.textContent()).toBe(await answer.textContent());
    const current = await shown.textContent();
    await ratio.fill("rubbish");
    expect(await shown.textContent()).toBe(`[${current}]`);
    expect(await strip(page).innerText()).toContain("Not current.");
    // Who listens hears the sheet, which says it already.
    expect(await page.locator(".pinned").getAttribute("aria-hidden")).toBe("true");
    expect(await page.locator(".pinned :is(a, button, input, select, [tabindex])").count()).toBe(0);

    await ratio.fill("2.5");
    const heightOf = () => page.evaluate(() => document.documentElement.scrollHeight);
    const keys = await box(page.locator(".keys"));
    const high = await heightOf();
    await ratio.blur();
    await strip(page).waitFor({ state: "hidden" });
    await drawn(page);
    expect(high - (await heightOf())).toBeCloseTo(keys.height, 0);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".pinned, .keys, .takes").filter({ visible: true }).count()).toBe(0);
  });

  test("the strip keeps to the part of the page that a keyboard laid over it leaves free", async () => {
    const page = await newVisitor({ viewport: { width: 390, height: 700 }, ...finger });
    await page.addInitScript((height) => {
      const over = Object.assign(new EventTarget(), { height, width: 390, offsetTop: 0, scale: 1 });
      Object.defineProperty(window, "visualViewport", { value: over });
    }, overKeyboard.height);
    await open(page, charge);
    await touch(page, "r");
    await drawn(page);
    expect((await box(strip(page))).bottom).toBeCloseTo(overKeyboard.height, 0);
    const used = await box(page.locator(".field:has(.keys)"));
    expect(used.bottom).toBeLessThanOrEqual((await box(strip(page))).top);
  });

  test("a high window has no strip", async () => {
    const page = await newVisitor({ viewport: { width: 390, height: 844 }, ...finger });
    await open(page, charge);
    await touch(page, "r");
    await drawn(page);
    expect(await strip(page).isVisible()).toBe(false);
    await page.setViewportSize(overKeyboard);
    await strip(page).waitFor();
    await page.setViewportSize({ width: 390, height: 844 });
    await strip(page).waitFor({ state: "hidden" });
  });

  test("nothing is wrong for who listens, and every target is 48 px", async () => {
    const page = await onPhone();
    await open(page, charge);
    await touch(page, "T_0");
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect((await violations(page, ".katex-html")).join("\n")).toBe("");
    }
    const small = await page.locator(".field:has(.keys) :is(select, button)").evaluateAll((all) =>
      all
        .map((one) => one.getBoundingClientRect())
        .filter(({ width, height }) => width < 48 || height < 48)
        .map(({ width, height }) => `${width} × ${height}`),
    );
    expect(await page.locator(".field:has(.keys) button").count()).toBe(4);
    expect(small).toEqual([]);
    await key(page, "Calculate").tap();
    expect((await violations(page, ".katex-html")).join("\n")).toBe("");
  });

  test("the barometer at the head of the page has the keys too", async () => {
    const page = await onPhone();
    await open(page, "/lessons/pressures/");
    await page.locator("[popovertarget=barometer-setting]").first().tap();
    const elevation = page.locator("#head-elevation");
    await elevation.tap();
    await key(page, "Change the sign").waitFor();
    await elevation.fill("120");
    await key(page, "A step up").tap();
    expect(await elevation.inputValue()).toBe("121");
    await key(page, "Change the sign").tap();
    expect(await elevation.inputValue()).toBe("-121");
    expect(await elevation.isVisible()).toBe(true);
  });
});

describe.each([charge, "/numbers/cooler-rating/", "/numbers/two-stage-split/", ...quickPages])(
  "%s at 390 × 360 by the keyboard alone",
  (path) => {
    test("each field in use, with its keys and what is said of it, stands above the answer", async () => {
      const page = await onPhone();
      await open(page, path);
      await page.evaluate(() => document.fonts.ready);
      const sheet = page.locator("[data-calculator]").first();
      const over = path.startsWith("/quick/") ? sheet.locator(".get") : strip(page);
      const inputs = sheet.locator('.field input[type="text"]');
      const count = await inputs.count();
      expect(count).toBeGreaterThan(0);
      const wrong: string[] = [];
      await inputs.first().focus();
      await page.locator(".keys").waitFor();
      for (let reached = 0; reached < count; ) {
        const id = await focused(page);
        if (await inputs.evaluateAll((all, now) => all.some((one) => one.id === now), id)) {
          reached += 1;
          for (const text of ["rubbish", null]) {
            const input = page.locator(`[id="${id}"]`);
            const before = await input.inputValue();
            if (text !== null) await page.keyboard.press("Control+a");
            if (text !== null) await page.keyboard.type(text);
            await drawn(page);
            await drawn(page);
            const row = page.locator(".field", { has: input });
            const [used, pinned] = [await box(row), await box(over)];
            const says = `${id} ${text ?? "as it was"}: ${used.top} to ${used.bottom} over ${pinned.top}`;
            if (used.top < -0.5 || used.bottom > pinned.top + 0.5) wrong.push(says);
            if (pinned.bottom > overKeyboard.height + 0.5) wrong.push(`strip ${says}`);
            if (text !== null) await input.fill(before);
          }
        }
        await page.keyboard.press("Tab");
      }
      expect(wrong.join("\n")).toBe("");
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(overKeyboard.width);
    });
  },
);

describe("on a desk", () => {
  test("the arrows step a field, and no keys are shown", async () => {
    const page = await newVisitor({ viewport: { width: 1440, height: 900 } });
    await open(page, charge);
    const ratio = field(page, "charge-path", "r");
    await ratio.focus();
    await ratio.fill("2.2");
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => ratio.inputValue()).toBe("2.22");
    await page.keyboard.press("Shift+ArrowUp");
    await expect.poll(() => ratio.inputValue()).toBe("2.42");
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowDown");
    await expect.poll(() => ratio.inputValue()).toBe("2.32");
    await ratio.fill("1.01");
    await page.keyboard.press("Shift+ArrowDown");
    await expect.poll(() => ratio.inputValue()).toBe("1");
    await page.keyboard.press("ArrowDown");
    await drawn(page);
    expect(await ratio.inputValue()).toBe("1");
    expect(await ratio.getAttribute("aria-invalid")).toBe("false");
    expect(await page.locator(".keys, .pinned").count()).toBe(0);
    // What was stepped is the visitor's own: the link carries it.
    await page.waitForFunction(() => /charge-path\.r=1(?:&|$)/.test(location.hash));
  });

  test("rubbish stays as it is", async () => {
    const page = await newVisitor();
    await open(page, charge);
    const ratio = field(page, "charge-path", "r");
    await ratio.fill("2.2.2");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowDown");
    await page.waitForLoadState("networkidle");
    await drawn(page);
    expect(await ratio.inputValue()).toBe("2.2.2");
  });

  test.each([390, 820, 1440])("what a field takes is said once a calculator at %i px", async (width) => {
    for (const path of [charge, "/quick/boost-ratio/"]) {
      const page = await newVisitor({ viewport: { width, height: 900 } });
      await open(page, path);
      const line = page.locator(".takes").filter({ visible: true });
      expect(await line.count()).toBe(1);
      expect(await line.innerText()).toContain("units and calculations");
    }
    const still = await newVisitor({ viewport: { width, height: 900 }, javaScriptEnabled: false });
    await still.goto(charge);
    expect(await still.locator(".takes").isVisible()).toBe(false);
  });
});
