import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { writeWorker } from "../../src/integrations/service-worker.ts";
import { newKeeper, servedCopy, shelves, until, untilKept } from "./kept.ts";
import { field, open } from "./site.ts";

const visited = "/numbers/charge-path/";
const unvisited = "/numbers/air-demand/";
const fragment = "/working/exchanger/effectiveness/";

/** Changes a file of a served copy: words that every page and fragment has. */
function alter(folder: string, path: string, by: string): void {
  const file = join(folder, path, "index.html");
  const html = readFileSync(file, "utf8");
  writeFileSync(file, html.includes("</h1>") ? html.replace("</h1>", `${by}</h1>`) : html + by);
}

const seekUpdate = (page: Page) =>
  page.evaluate(async () => {
    const found = await navigator.serviceWorker.getRegistration();
    await found?.update().catch(() => {});
  });

/** A visitor with one page of the first edition kept, in sight and under the worker. */
async function keeperOf(address: string): Promise<Page> {
  const page = await newKeeper(address);
  await open(page, visited);
  await untilKept(page, visited);
  await open(page, visited);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return page;
}

const heading = (page: Page) => page.locator("h1").innerText();
const textOf = (page: Page, path: string) =>
  page.evaluate(
    (asked) =>
      fetch(asked).then(
        (answer) => answer.text(),
        () => "refused",
      ),
    path,
  );

test("a newer edition is announced, waits, and takes over when asked; what was typed stays", async () => {
  const { folder, address } = await servedCopy();
  const page = await keeperOf(address);
  const first = Object.keys(await shelves(page));
  alter(folder, visited, " II");
  await writeWorker(folder);

  await field(page, "charge-path", "r").fill("2.9");
  await page.waitForFunction(() => location.hash.includes("2.9"));
  await seekUpdate(page);
  const bar = page.locator(".edition");
  await bar.locator("[role=status]").filter({ hasText: "A newer edition is ready." }).waitFor();
  // Until it is taken, the old one stands.
  await page.reload();
  expect(await heading(page)).not.toContain("II");
  await bar.getByRole("button", { name: "Use it now" }).click();
  await page.locator("h1", { hasText: "II" }).waitFor();
  await until(
    async () => (await field(page, "charge-path", "r").inputValue()) === "2.9",
    "what was typed is back",
  );
  await until(async () => Object.keys(await shelves(page)).length === 1, "the old shelf is gone");
  expect(Object.keys(await shelves(page))).not.toEqual(first);

  await page.context().setOffline(true);
  await open(page, visited);
  expect(await heading(page)).toContain("II");
}, 120_000);

test("an update of which a file is missing leaves the old edition whole, and comes about once all is there", async () => {
  const { folder, address } = await servedCopy();
  const page = await keeperOf(address);
  const before = await shelves(page);
  alter(folder, visited, " II");
  alter(folder, "/numbers/", " II");
  await writeWorker(folder);
  const page2 = readFileSync(join(folder, visited, "index.html"));
  rmSync(join(folder, visited, "index.html"));

  const ends = page.evaluate(async () => {
    const found = await navigator.serviceWorker.getRegistration();
    if (!found) return "no worker";
    const begun = new Promise<ServiceWorker>((go) => {
      found.addEventListener("updatefound", () => found.installing && go(found.installing), { once: true });
    });
    found.update().catch(() => {});
    const next = await begun;
    return new Promise<string>((go) => {
      next.addEventListener("statechange", () => go(next.state));
    });
  });
  expect(await ends).toBe("redundant");
  expect(await shelves(page)).toEqual(before);
  expect(await page.locator(".edition").count()).toBe(0);
  await page.context().setOffline(true);
  for (const path of [visited, "/numbers/"]) {
    await open(page, path);
    expect(await heading(page)).not.toContain("II");
  }

  await page.context().setOffline(false);
  writeFileSync(join(folder, visited, "index.html"), page2);
  await seekUpdate(page);
  await page.locator(".edition").waitFor();
}, 120_000);

test("editions do not mix while the worker is of the older one", async () => {
  const { folder, address } = await servedCopy();
  const page = await keeperOf(address);
  // The host has the new files, and still the old worker.
  for (const path of [visited, unvisited, fragment]) alter(folder, path, " II");

  expect(await textOf(page, fragment)).toBe("refused");
  expect(await textOf(page, "/working/compression/")).toContain("data-relation");

  await open(page, unvisited);
  expect(await heading(page)).toContain("II");
  // A page of the newer edition gets what belongs to that.
  expect(await textOf(page, fragment)).toContain(" II");
  const [paths = []] = Object.values(await shelves(page));
  expect(paths).not.toContain(unvisited);
  expect(paths).not.toContain(fragment);

  await open(page, visited);
  expect(await heading(page)).not.toContain("II");
}, 120_000);
