import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { numberPages } from "./dist.ts";
import { calculatorOn, newVisitor, open } from "./site.ts";

// The narrowest phone, and the narrowest window in which fields stand beside their labels in two columns.
const widths = [360, 820];

/** The fields in sight: the id of each, and what of it is cut. */
const inSight = (page: Page, id: string): Promise<{ name: string; cut: string[] }[]> =>
  calculatorOn(page, id)
    .locator(".field input")
    .evaluateAll((inputs) => {
      const pen = document.createElement("canvas").getContext("2d");
      return (inputs as HTMLInputElement[]).map((input) => {
        const cut = input.scrollWidth > input.clientWidth ? [input.value] : [];
        const unit = input.parentElement?.querySelector<HTMLSelectElement>("select.unit");
        const text = unit?.selectedOptions[0]?.text;
        if (pen && unit && text !== undefined) {
          // A list has no width of its text: it is measured, and counted with its padding.
          const look = getComputedStyle(unit);
          pen.font = `${look.fontSize} ${look.fontFamily}`;
          const padding = Number.parseFloat(look.paddingLeft) + Number.parseFloat(look.paddingRight);
          if (pen.measureText(text).width + padding > unit.clientWidth) cut.push(text);
        }
        return { name: input.id, cut };
      });
    });

// With every option of every choice, since each may bring fields.
test.each(numberPages)("%s cuts no example value and no unit at any width", async (path) => {
  const id = path.split("/").at(-2) ?? "";
  const page = await newVisitor();
  await open(page, path);
  await page.evaluate(() => document.fonts.ready);
  const measured = new Set<string>();
  const cut = new Set<string>();
  const measure = async () => {
    const names = (await inSight(page, id)).map(({ name }) => name);
    if (names.every((name) => measured.has(name))) return;
    for (const name of names) measured.add(name);
    for (const system of ["us", "metric"]) {
      await page.selectOption(".head .units select", system);
      for (const width of widths) {
        await page.setViewportSize({ width, height: 900 });
        for (const field of await inSight(page, id))
          for (const text of field.cut) cut.add(`${field.name} at ${width}: ${text}`);
      }
    }
  };

  await measure();
  const choices = calculatorOn(page, id).locator(".pick select");
  for (const name of await choices.evaluateAll((all) => all.map((choice) => choice.id))) {
    const choice = page.locator(`select[id="${name}"]`);
    if ((await choice.count()) === 0) continue;
    const chosen = await choice.inputValue();
    const options = choice.locator("option");
    for (const option of await options.evaluateAll((all) =>
      all.map((one) => (one as HTMLOptionElement).value),
    )) {
      await choice.selectOption(option);
      await measure();
    }
    await choice.selectOption(chosen);
  }
  expect(measured.size).toBeGreaterThan(0);
  expect([...cut]).toEqual([]);
});

test("the barometer of the page stays in sight on a phone while a long reading is typed", async () => {
  const page = await newVisitor({ viewport: { width: 390, height: 700 } });
  await open(page, "/lessons/pressures/");
  await page.locator("[popovertarget=barometer-setting]").first().click();
  const station = page.locator("#head-station");
  await station.fill("");
  for (const letter of "29.92 inHg") {
    await station.press(letter === " " ? "Space" : letter);
    expect(await station.isVisible()).toBe(true);
  }
  expect(await station.inputValue()).toBe("29.92 inHg");
  expect((await station.boundingBox())?.width).toBeGreaterThan(60);
});
