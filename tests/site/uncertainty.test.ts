import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { violationsOf } from "./axe.ts";
import { choose, field, newVisitor, notANumber, open, sizes } from "./site.ts";

const id = "charge-path";
const path = `/numbers/${id}/`;
/** Answers come once typing rests, on a busy machine later. */
const wait = { timeout: 20_000 };
const panel = (page: Page) => page.locator(".doubt");
const drawButton = (page: Page) => page.locator(`button[id="${id}-pm-draw"]`);
const drawsSay = (page: Page) => page.locator(".draws [role=status]");
const beside = (page: Page, result: string) =>
  page
    .locator(".res > div", { has: page.locator(`[data-result="${result}"]`) })
    .locator(".says")
    .first();

/** Types two ± and waits until the panel, which opens by itself, tells what follows. */
async function typed(page: Page): Promise<void> {
  await open(page, path);
  await field(page, id, "T_0").fill("25 ± 2 °C");
  await field(page, id, "r").fill("2.2 ± 0.05");
  await drawButton(page).waitFor();
}

/** The numbers of the draws, as the table shows them. */
const drawnRow = (page: Page) => page.locator(".draws tbody tr").first().innerText();

test("a ± typed into a field stands beside the results and opens the panel", async () => {
  const page = await newVisitor();
  await typed(page);
  await expect.poll(() => beside(page, "rho_m").innerText(), wait).toMatch(/^±\s0\.0\d+\skg\/m³ \(k = 2\)$/);
  expect(await panel(page).getAttribute("open")).not.toBeNull();
  const row = panel(page).locator("tr", { hasText: "Density in the manifold" }).first();
  expect(await row.innerText()).toMatch(/2\.\d+\skg\/m³\s+±\s0\.0\d+\skg\/m³/);
  await choose(page, id, "pm-shows", "standard");
  await expect.poll(() => beside(page, "rho_m").innerText(), wait).toMatch(/\(standard\)$/);
});

test("what each field brings is told in the visitor's units", async () => {
  const page = await newVisitor();
  await typed(page);
  await choose(page, id, "pm-of", "T_2");
  await expect
    .poll(() => panel(page).locator("table", { hasText: "goes with each" }).innerText(), wait)
    .toMatch(/Ambient temperature\s+2\.0\sK\s+1\sK more gives \+1\.\d+\sK/);
  expect(await panel(page).locator("svg[aria-label]").first().getAttribute("aria-label")).toMatch(
    /Pressure ratio/,
  );
});

test("draws run in a worker with progress, and the same seed gives the same numbers", async () => {
  const page = await newVisitor();
  const workers: string[] = [];
  page.on("worker", (worker) => workers.push(worker.url()));
  await typed(page);
  await page.evaluate(() => {
    const seen = new MutationObserver(() => {
      if (document.querySelector(".draws progress[aria-label]")) document.body.dataset["progress"] = "seen";
    });
    seen.observe(document.body, { subtree: true, childList: true });
  });
  await drawButton(page).click();
  await expect.poll(() => drawsSay(page).innerText(), wait).toMatch(/draws were made with seed 1\.$/);
  expect(workers).toHaveLength(1);
  expect(await page.evaluate(() => document.body.dataset["progress"])).toBe("seen");
  const first = await drawnRow(page);
  expect(first).toMatch(/^Draws\s+2\.\d+\s+0\.0\d+\skg\/m³\s+2\.\d+ to 2\.\d+/);
  expect(await page.locator(".draws").innerText()).toMatch(/The first order is good enough here/);
  await page.locator(`input[id="${id}-pm-seed"]`).fill("7");
  await drawButton(page).click();
  await expect.poll(() => drawsSay(page).innerText(), wait).toMatch(/seed 7\.$/);
  await page.locator(`input[id="${id}-pm-seed"]`).fill("1");
  await drawButton(page).click();
  await expect.poll(() => drawsSay(page).innerText(), wait).toMatch(/seed 1\.$/);
  expect(await drawnRow(page)).toBe(first);
});

test("draws can be stopped, and nothing is lost", async () => {
  const page = await newVisitor();
  // A worker that is slow to begin.
  await page.route(/draw-worker/, async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 2000));
    await route.continue();
  });
  await typed(page);
  await drawButton(page).click();
  await expect.poll(() => drawButton(page).innerText(), wait).toBe("Stop");
  await drawButton(page).click();
  await expect.poll(() => drawsSay(page).innerText(), wait).toBe("Stopped. Nothing was changed.");
  expect(await field(page, id, "T_0").inputValue()).toBe("25 ± 2 °C");
  expect(await drawButton(page).innerText()).toMatch(/^Draw 20/);
});

test.each([
  ["that cannot be fetched", (page: Page) => page.route(/draw-worker/, (route) => route.abort())],
  [
    "that is refused",
    (page: Page) =>
      page.addInitScript(() => {
        Object.assign(globalThis, {
          Worker: class {
            constructor() {
              throw new DOMException("refused", "SecurityError");
            }
          },
        });
      }),
  ],
])("a worker %s: the draws are made in the page, which says so", async (_, block) => {
  const page = await newVisitor();
  await block(page);
  await typed(page);
  await drawButton(page).click();
  await expect.poll(() => drawsSay(page).innerText(), wait).toMatch(/made with seed 1\. .*in the page/);
  expect(await drawnRow(page)).toMatch(/^Draws\s+2\.\d+/);
});

test("the panel's own fields write into the fields of the numbers, and a link carries all of it", async () => {
  const page = await newVisitor();
  await typed(page);
  await panel(page).getByText("Give each ± here").click();
  await field(page, id, "pm-eta_s").fill("0.02");
  expect(await field(page, id, "eta_s").inputValue()).toMatch(/ ± 0\.02$/);
  await choose(page, id, "pm-means", "standard");
  await panel(page).getByText("Errors that go together").click();
  await page.locator(`button[id="${id}-pm-add"]`).click();
  await field(page, id, "pm-pair-0-r").fill("0.9");
  await expect.poll(() => page.url(), wait).toMatch(/pm=standard;expanded;T_0;r;0\.9/);
  const told = await panel(page).locator("tbody").first().innerText();

  const other = await newVisitor();
  await open(other, page.url());
  await drawButton(other).waitFor();
  expect(await panel(other).locator("tbody").first().innerText()).toBe(told);
  expect(await field(other, id, "pm-pair-0-r").inputValue()).toBe("0.9");
  expect(await field(other, id, "T_0").inputValue()).toBe("25 ± 2 °C");
});

test("rubbish gets a sentence, and nothing is lost", async () => {
  const page = await newVisitor();
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  await typed(page);
  await panel(page).getByText("Give each ± here").click();
  await panel(page).getByText("Errors that go together").click();
  await page.locator(`button[id="${id}-pm-add"]`).click();
  for (const text of ["-1", "lots", "1e999", "(((", "<b>2</b>", "5 kg", "constructor"]) {
    await field(page, id, "pm-T_0").fill(text);
    await expect.poll(() => page.locator(`[id="${id}-pm-T_0-msg"]`).innerText(), wait).toMatch(/\.$/);
    expect(await field(page, id, "pm-T_0").inputValue(), text).toBe(text);
  }
  await field(page, id, "pm-T_0").fill("2");
  for (const text of ["2", "", "lots", "−1.5"]) {
    await field(page, id, "pm-pair-0-r").fill(text);
    await expect.poll(() => page.locator(`[id="${id}-pm-pair-0-msg"]`).innerText(), wait).toMatch(/\.$/);
  }
  await page.locator(`input[id="${id}-pm-seed"]`).fill("one");
  expect(await page.locator(`[id="${id}-pm-seed-msg"]`).innerText()).toMatch(/whole number/);
  expect((await panel(page).innerText()).replace(/“[^”]*”/g, "")).not.toMatch(notANumber);
  expect(errors).toEqual([]);
});

test("a held result stands still, and the panel says how far off what was found may be", async () => {
  const page = await newVisitor();
  await open(page, path);
  await choose(page, id, "cooler", "effectiveness");
  await page.locator(".back > summary").click();
  await choose(page, id, "want-result", "rho_m");
  await field(page, id, "want").fill("2.3");
  await choose(page, id, "want-input", "r");
  await page.locator(`button[id="${id}-want-held"]`).click();
  await field(page, id, "T_0").fill("25 ± 2");
  await expect
    .poll(() => panel(page).innerText(), wait)
    .toMatch(
      /“Pressure ratio” was found so that “Density in the manifold” is as wanted: 2\.\d+ ± 0\.0\d+ \(k = 2\)/,
    );
});

test("by keyboard alone the panel is opened, and draws are made", async () => {
  const page = await newVisitor();
  await open(page, path);
  await panel(page).locator("> summary").focus();
  await page.keyboard.press("Enter");
  await page.locator(`select[id="${id}-pm-means"]`).waitFor();
  expect(await panel(page).innerText()).toMatch(/No field holds a ± yet/);
  await field(page, id, "r").focus();
  await page.keyboard.press("End");
  await page.keyboard.type(" +/- 0.05");
  await drawButton(page).waitFor();
  await drawButton(page).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => drawsSay(page).innerText(), wait).toMatch(/were made/);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe(`${id}-pm-draw`);
});

describe.each(sizes)("at $width px", (viewport) => {
  test("the open panel fits, is large enough to touch, and passes axe", async () => {
    const page = await newVisitor({ viewport });
    await typed(page);
    await panel(page).getByText("Give each ± here").click();
    await panel(page).getByText("Errors that go together").click();
    await page.locator(`button[id="${id}-pm-add"]`).click();
    await drawButton(page).click();
    await expect.poll(() => drawsSay(page).innerText(), wait).toMatch(/were made/);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBeLessThanOrEqual(0);
    const small = await panel(page)
      .locator(":is(select, button, input, summary)")
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML),
      );
    expect(small).toEqual([]);
    expect(await violationsOf(page, ".doubt")).toEqual([]);
  });
});

test("without JavaScript it is not offered, and in a lesson it is not either", async () => {
  const page = await newVisitor({ javaScriptEnabled: false });
  await page.goto(path);
  expect(await panel(page).isVisible()).toBe(false);
  await page.goto("/quick/boost-ratio/");
  expect(await panel(page).count()).toBe(0);
});
