import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { below, fileOf, read } from "./dist.ts";
import { newVisitor, notANumber, open, parse } from "./site.ts";

const examplePages = below("/examples/");
const pump = "/examples/irrigation-pump/";
const room = { viewport: { width: 1280, height: 720 } };

const folded = (page: Page) => page.locator("main details");
const openOnes = (page: Page) => page.locator("main details[open]");
const status = (page: Page) => page.locator("[data-projector] [role=status]");
const shownAs = (page: Page, how: string) => page.locator(`[data-shown="${how}"]`);

describe.each(examplePages)("%s", (path) => {
  test("keeps its working, its answer and its wrong answers folded, and has them without JavaScript", async () => {
    const page = await newVisitor({ javaScriptEnabled: false });
    await page.goto(path);
    expect(await page.locator("main button").filter({ visible: true }).count()).toBe(0);
    expect(await folded(page).count()).toBeGreaterThanOrEqual(3);
    expect(await openOnes(page).count()).toBe(0);
    expect(await page.locator(".found output").isVisible()).toBe(false);
    for (const summary of await page.locator("main summary").all()) await summary.click();
    expect(await page.locator(".found output").isVisible()).toBe(true);
    expect(await page.locator(".step").first().isVisible()).toBe(true);
    expect(await page.locator("main").innerText()).not.toMatch(notANumber);
    expect(await page.locator(".wanted").textContent()).not.toMatch(/\s[;,.]/);
    for (const wrong of await page.locator(".wrong > div").allTextContents()) expect(wrong).toMatch(/\d/);
  });

  test("shows itself to a room in steps that fit the width", async () => {
    const page = await newVisitor(room);
    await open(page, `${path}#projector`);
    const steps = await page.locator(".step").count();
    const seen: string[] = [];
    const tooWide: string[] = [];
    await page.keyboard.press("Home");
    // A part that is taller than the room takes more than one key.
    for (let keys = 0; keys < 4 * steps + 8 && seen.at(-1) !== "Answer"; keys++) {
      const name = await status(page).innerText();
      if (seen.at(-1) !== name) seen.push(name);
      const wide = await page.evaluate(() => {
        const root = document.documentElement;
        const over = [...document.querySelectorAll('[data-shown="present"] :is(.calc, dl, p)')];
        return [root, ...over].filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0)
          .length;
      });
      if (wide > 0) tooWide.push(name);
      await page.keyboard.press("ArrowRight");
    }
    expect(tooWide).toEqual([]);
    const all = Array.from({ length: steps }, (_, i) => `Step ${i + 1} of ${steps}`);
    expect(seen).toEqual(["Given", ...all, "Answer"]);
  }, 120_000);
});

describe("the answers of an example", () => {
  test("are shown and hidden all at once", async () => {
    const page = await newVisitor();
    await open(page, pump);
    const button = page.locator("[data-answers]");
    expect(await button.innerText()).toBe("Show all answers");
    await button.click();
    expect(await openOnes(page).count()).toBe(await folded(page).count());
    await expect.poll(() => button.innerText()).toBe("Hide all answers");
    await button.click();
    expect(await openOnes(page).count()).toBe(0);
    await expect.poll(() => button.innerText()).toBe("Show all answers");
  });

  test("are shown by an address", async () => {
    const page = await newVisitor();
    await open(page, `${pump}#answers`);
    await expect.poll(() => openOnes(page).count()).toBe(await folded(page).count());
  });

  test("are printed as they stand: hidden with room to work, or shown with the working", async () => {
    const page = await newVisitor({ viewport: { width: 660, height: 980 } });
    await open(page, pump);
    await page.emulateMedia({ media: "print" });
    const height = async () => (await page.locator(".room").boundingBox())?.height ?? 0;
    expect(await height()).toBeGreaterThan(200);
    expect(await page.locator(".found").isVisible()).toBe(false);
    expect(await page.locator(".wrong-answers").isVisible()).toBe(false);
    await page.emulateMedia({ media: "screen" });
    await page.locator("[data-answers]").click();
    await page.emulateMedia({ media: "print" });
    expect(await height()).toBe(0);
    for (const part of [".found", ".step", ".wrong-answers"])
      expect(await page.locator(part).first().isVisible(), part).toBe(true);
  });
});

describe("the projector view", () => {
  test("opens by its button, goes by keys and buttons, and gives back what it found", async () => {
    const page = await newVisitor(room);
    await open(page, "/examples/grain-elevator/");
    await page.locator("[data-project]").focus();
    await page.keyboard.press("Enter");
    expect(new URL(page.url()).hash).toBe("#projector");
    expect(await page.locator(".head").isVisible()).toBe(false);
    expect(await page.locator(".opening").isVisible()).toBe(false);
    expect(await status(page).innerText()).toBe("Given");

    const steps = await page.locator(".step").count();
    await page.keyboard.press("End");
    expect(await status(page).innerText()).toBe("Answer");
    await page.keyboard.press("Home");
    const given = await shownAs(page, "present").innerText();
    expect(given).toContain("Given");
    while ((await status(page).innerText()) === "Given") await page.keyboard.press("Space");
    expect(await status(page).innerText()).toBe(`Step 1 of ${steps}`);
    await page.locator('[data-turn="next"]').click();
    expect(await status(page).innerText()).toBe(`Step 2 of ${steps}`);
    await page.keyboard.press("PageUp");
    expect(await status(page).innerText()).toBe(`Step 1 of ${steps}`);
    await page.keyboard.press("ArrowDown");
    expect(await shownAs(page, "later").first().isVisible()).toBe(false);
    const heights = await page
      .locator(".step .at")
      .evaluateAll((all) => all.slice(0, 2).map((one) => one.getBoundingClientRect().height));
    expect((heights[1] ?? 0) / (heights[0] ?? 1)).toBeGreaterThan(1.8);

    await page.keyboard.press("Escape");
    expect(await page.locator(".head").isVisible()).toBe(true);
    expect(await openOnes(page).count()).toBe(0);
    expect(new URL(page.url()).hash).toBe("");
    const focused = await page.evaluate(() => document.activeElement?.hasAttribute("data-project"));
    expect(focused).toBe(true);
  });

  test("a part that fits stands whole over the bar, and the last one stays where it is", async () => {
    const page = await newVisitor(room);
    await open(page, "/examples/grain-elevator/#projector");
    const place = () =>
      shownAs(page, "present").evaluate((part) => {
        const bar = document.querySelector("[data-projector]")?.getBoundingClientRect().top ?? 0;
        const { top, bottom, height } = part.getBoundingClientRect();
        return { top, bottom, height, bar };
      });
    const steps = await page.locator(".step").count();
    let fitting = 0;
    for (let step = 1; step <= steps; step++) {
      while ((await status(page).innerText()) !== `Step ${step} of ${steps}`)
        await page.keyboard.press("ArrowRight");
      const { top, bottom, height, bar } = await place();
      if (height <= bar) {
        fitting += 1;
        expect(bottom, `step ${step}`).toBeLessThanOrEqual(bar + 1);
      }
      expect(top, `step ${step}`).toBeGreaterThanOrEqual(-1);
    }
    expect(fitting).toBeGreaterThan(steps / 2);
    await page.keyboard.press("End");
    const answer = async () => Math.round((await place()).bottom);
    while ((await answer()) > (await place()).bar + 2) await page.keyboard.press("ArrowRight");
    const stands = await answer();
    await page.keyboard.press("ArrowRight");
    expect(await answer()).toBe(stands);
  });

  test("opens and closes by Alt and P", async () => {
    const page = await newVisitor(room);
    await open(page, pump);
    await page.keyboard.press("Alt+p");
    expect(await status(page).isVisible()).toBe(true);
    await page.keyboard.press("Alt+p");
    expect(await status(page).isVisible()).toBe(false);
  });

  test("is loaded by the pages of examples only", () => {
    const holds = (path: string) => read(fileOf(path)).toString().includes("data-projector");
    expect(examplePages.filter((path) => !holds(path))).toEqual([]);
    expect(["/", "/examples/", "/numbers/charge-path/"].filter(holds)).toEqual([]);
  });
});

/** Answers as independent programs gave them, in the order in which the page shows them; `at` is how far ours may lie from it. */
const independent: Readonly<Record<string, readonly (readonly [value: number, at: number])[]>> = {
  // Another polynomial for the heat capacity, good to a few parts in a thousand: outlet, ideal outlet, power.
  "grain-elevator": [
    [138.1, 0.5],
    [102.9, 0.4],
    [21.5, 0.1],
  ],
  // Sutherland's law for the viscosity: loss, pressure behind, mean density.
  "cold-bench": [
    [4.242, 0.006],
    [260.76, 0.06],
    [2.4567, 0.001],
  ],
  "irrigation-pump": [
    [1.9739, 5e-4],
    [126.36, 0.06],
    [2.2834, 6e-4],
    [1.6418, 5e-4],
    [0.15405, 6e-5],
    [0.12814, 6e-5],
    [15.75, 0.006],
    [11.88, 0.006],
  ],
  "generating-set": [
    [0.2271, 6e-5],
    [2.6669, 6e-4],
    [167.3, 0.06],
  ],
  // Friction by another explicit formula, water by IAPWS-97: position, pressures in kPa, coefficient in m³/h, authority, flow.
  "cell-branch": [
    [0.62535, 1e-4],
    [285.41, 0.06],
    [7.222, 6e-4],
    [10.125, 0.006],
    [242.53, 0.06],
    [5.7732, 6e-4],
    [279.26, 0.06],
    [0.36288, 6e-5],
    [376.05, 0.06],
  ],
  // Air by a cubic for its heat capacity, water by IAPWS-97: inlet, fresh, led back, outlet, wall, Reynolds number, a hundredth more flow.
  "delivery-van": [
    [38.3, 0.25],
    [0.489, 0.008],
    [1.511, 0.008],
    [43.58, 0.25],
    [70.86, 0.25],
    [5040, 25],
    [-0.0679, 5e-4],
  ],
  // Air by a cubic for its heat capacity: speed, air and wall, outlet, Reynolds number, conductance.
  "sea-valve": [
    [0.7407, 2e-4],
    [56.38, 0.3],
    [70.02, 0.3],
    [37.64, 0.1],
    [9550, 30],
    [1585.6, 3],
  ],
  "hill-climb-four": [
    [2.24936, 6e-4],
    [220.44, 0.06],
    [113.44, 0.06],
    [132.423, 0.06],
    [2.2891, 6e-4],
    [0.24303, 6e-5],
    [26.346, 0.006],
    [20.571, 0.006],
  ],
  "pilot-boat": [
    [31.851, 0.006],
    [33.669, 0.006],
    [136.165, 0.06],
    [3.949, 6e-4],
    [0.03585, 6e-6],
    [0.97623, 6e-5],
  ],
  // There with another formula for the saturation pressure: litres a minute, dew point, flow, duty, share.
  "island-ferry": [
    [48.5 / 60, 0.003],
    [49.15, 0.03],
    [0.013385, 3e-5],
    [182.66, 0.2],
    [0.177, 6e-4],
  ],
  "quarry-loader": [
    [1.3644, 6e-4],
    [71.06, 0.006],
    [201.78, 0.06],
    [131.569, 0.06],
    [137.302, 0.06],
    [125.488, 0.06],
    [224.41, 0.06],
    [20.5, 0.006],
    [91.88, 0.006],
  ],
};

test("every example has answers of an independent program", () => {
  expect(
    Object.keys(independent)
      .map((id) => `/examples/${id}/`)
      .sort(),
  ).toEqual([...examplePages].sort());
});

test.each(Object.entries(independent))("%s answers what independent programs do", async (id, expected) => {
  const page = await newVisitor();
  await open(page, `/examples/${id}/#answers`);
  const shown = await page.locator(".found dd:not(.says)").allInnerTexts();
  // Of "126.4 °C (259.4 °F)" the number before the unit.
  const values = shown.map((text) => parse(/^\s*[−\d.,\u202f]+/.exec(text)?.[0] ?? ""));
  expect(values.length).toBeGreaterThanOrEqual(expected.length);
  for (const [i, [value, at]] of expected.entries())
    expect(Math.abs((values[i] ?? Number.NaN) - value), `${i}: ${shown[i]} for ${value}`).toBeLessThanOrEqual(
      at,
    );
});

test.each([
  // Hoses swapped; nearly no water.
  ["pilot-boat", ["35.9", "115"]],
  // Squared flow; ideal compressor.
  ["cold-bench", ["10.0"]],
  ["grain-elevator", ["103"]],
  // One stage; both as good as the second, at the best split.
  ["quarry-loader", ["125", "119"]],
  // Compressor and cooler, each by itself, and together; their shares.
  ["hill-climb-four", ["65.4", "20.9", "99.9", "85.0", "15.0"]],
] as const)("%s has its wrong numbers as independent programs do", async (id, numbers) => {
  const page = await newVisitor();
  await open(page, `/examples/${id}/#answers`);
  const text = await page.locator(".wrong-answers").innerText();
  for (const number of numbers)
    expect(text).toMatch(new RegExp(`(?<![\\d.])${RegExp.escape(number)}(?![\\d.]\\d)`));
});
