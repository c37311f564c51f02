import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { lessonPages, tablePages } from "./dist.ts";
import { newKeeper, shelves, until, untilKept } from "./kept.ts";
import { field, open, resultsOf } from "./site.ts";

const kept = (page: Page, name: string) => page.locator(`[data-keep="${name}"]`);
const amount = async (page: Page): Promise<number> =>
  Number((await kept(page, "amount").innerText()).replace(/ kB.*/, "").replaceAll(",", ""));

test("a calculator that was visited once computes without a network, with the steps that another choice brings in", async () => {
  const page = await newKeeper();
  await open(page, "/numbers/cooler-effectiveness/");
  await untilKept(page, "/numbers/cooler-effectiveness/");
  await page.context().setOffline(true);
  await open(page, "/numbers/cooler-effectiveness/");
  const before = await resultsOf(page, "cooler-effectiveness");
  await page.locator("details.work > summary").click();
  await page.locator("ol.steps > li").first().waitFor();
  const core = page.locator('select[id="cooler-effectiveness-core"]');
  const values = await core
    .locator("option:not(:checked)")
    .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
  expect(values.length).toBeGreaterThan(1);
  const steps = () =>
    page.locator("ol.steps > li").evaluateAll((all) => all.map(({ outerHTML }) => outerHTML));
  for (const value of values) {
    const old = await steps();
    await core.selectOption(value);
    await until(async () => String(await steps()) !== String(old), "the steps change");
    expect((await steps()).filter((step) => step.includes("could not be fetched"))).toEqual([]);
  }
  expect(await resultsOf(page, "cooler-effectiveness")).not.toEqual(before);
});

test("a page that is not kept is said to be so, and what is kept is a link away", async () => {
  const page = await newKeeper();
  await open(page, "/numbers/charge-path/");
  await untilKept(page, "/numbers/charge-path/");
  await page.context().setOffline(true);
  const [lesson = ""] = lessonPages;
  await page.goto(lesson);
  expect(page.url()).toContain(lesson);
  await kept(page, "asked").waitFor();
  const link = kept(page, "pages").locator("a", { hasText: /^Charge path$/ });
  await link.click();
  expect(new URL(page.url()).pathname).toBe("/numbers/charge-path/");
  expect(await page.locator("h1").innerText()).toBe("Charge path");
});

test("an address without its last slash leads to its page without a network too", async () => {
  const page = await newKeeper();
  await open(page, "/numbers/");
  await untilKept(page, "/numbers/");
  await page.context().setOffline(true);
  await page.goto("/numbers");
  expect(new URL(page.url()).pathname).toBe("/numbers/");
});

test("the search works whole without a network once it was used", async () => {
  const page = await newKeeper();
  await open(page, "/");
  await untilKept(page, "/");
  await page.reload();
  await page.keyboard.press("Control+k");
  await page.fill("#finder-query", "density");
  await page.locator("#finder ol a").first().waitFor();
  await untilKept(page, "/pagefind/pagefind.js");
  await page.context().setOffline(true);
  await page.reload();
  await page.keyboard.press("Control+k");
  await page.fill("#finder-query", "condensation");
  await page.locator("#finder ol a").first().waitFor();
  expect(await page.locator("#finder ol a").count()).toBeGreaterThan(3);
});

test("everything is kept on demand: with its size, stopped, gone on with, used, and removed", async () => {
  const page = await newKeeper();
  await page.goto("/offline/");
  await kept(page, "tools").waitFor();
  const whole = (await kept(page, "amount").innerText()).replace(/.* of /, "");
  expect(whole).toMatch(/^[1-9],\d{3} kB$/);
  const core = await amount(page);

  await kept(page, "start").click();
  await kept(page, "stop").waitFor();
  await page.waitForFunction(
    (atLeast) => (document.querySelector("progress")?.value ?? 0) > atLeast,
    (core + 100) * 1000,
  );
  await kept(page, "stop").click();
  await kept(page, "status")
    .filter({ hasText: /^Stopped/ })
    .waitFor();
  const part = await amount(page);
  expect(part).toBeGreaterThan(core);

  await kept(page, "start").click();
  await kept(page, "status").filter({ hasText: /^Done/ }).waitFor({ timeout: 100_000 });
  expect(await kept(page, "amount").innerText()).toBe(`${whole} of ${whole}`);

  await page.context().setOffline(true);
  for (const path of [tablePages[0] ?? "", lessonPages[0] ?? "", "/checks/"]) {
    const answer = await page.goto(path);
    expect(answer?.status(), path).toBe(200);
  }
  await page.keyboard.press("Control+k");
  await page.fill("#finder-query", "density");
  await page.locator("#finder ol a").first().waitFor();

  await page.goto("/offline/");
  await kept(page, "status")
    .filter({ hasText: /^Everything/ })
    .waitFor();
  await kept(page, "remove").click();
  await kept(page, "status")
    .filter({ hasText: /^Removed/ })
    .waitFor();
  expect(await amount(page)).toBe(core);
  const [paths = []] = Object.values(await shelves(page));
  expect(paths).not.toContain("/checks/");
  expect(paths).not.toContain("/everything");
}, 180_000);

test("a network that stops while everything is fetched is said, and nothing is lost", async () => {
  const page = await newKeeper();
  await page.goto("/offline/");
  await kept(page, "tools").waitFor();
  await kept(page, "start").click();
  await page.context().setOffline(true);
  await kept(page, "status")
    .filter({ hasText: /^The network stopped/ })
    .waitFor();
  expect(await kept(page, "start").isVisible()).toBe(true);
});

test("where there can be no worker, the page says why", async () => {
  const page = await newKeeper();
  await page.addInitScript(() => {
    navigator.serviceWorker.register = () => Promise.reject(new DOMException("no", "SecurityError"));
  });
  await page.goto("/offline/");
  await kept(page, "status").filter({ hasText: /https/ }).waitFor();
  expect(await kept(page, "tools").isVisible()).toBe(false);
});

test("what is typed without a network is computed", async () => {
  const page = await newKeeper();
  await open(page, "/numbers/charge-path/");
  await untilKept(page, "/numbers/charge-path/");
  await page.context().setOffline(true);
  await open(page, "/numbers/charge-path/");
  const before = await resultsOf(page, "charge-path");
  await field(page, "charge-path", "r").fill("2.9");
  await page.waitForFunction(
    (old) => document.querySelector("[data-result]")?.textContent !== old,
    Object.values(before)[0],
  );
  expect(await resultsOf(page, "charge-path")).not.toEqual(before);
});
