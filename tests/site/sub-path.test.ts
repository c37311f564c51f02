import { execFile } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { newKeeper, untilKept } from "./kept.ts";
import { serve } from "./serve.ts";
import { open } from "./site.ts";

const base = "/library/charge-air/";
let folder = "";
let stop = () => {};
let host = "";

// A site below a path of a host that has other things.
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "sub-path-"));
  const out = join(folder, base);
  await promisify(execFile)("astro", ["build", "--outDir", out], {
    cwd: join(import.meta.dirname, "../.."),
    env: { ...process.env, NODE_ENV: "production", BASE: base },
    maxBuffer: 64e6,
  });
  renameSync(join(out, "_headers"), join(folder, "_headers"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>Host</title>");
  const served = await serve(folder);
  stop = served.stop;
  host = served.address;
}, 300_000);
afterAll(() => {
  stop();
  rmSync(folder, { recursive: true, force: true });
});

test("every address in every page lies below the path", () => {
  const out = join(folder, base);
  const pages = readdirSync(out, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".html"),
  );
  expect(pages.length).toBeGreaterThan(100);
  const outside = pages.flatMap((file) =>
    Array.from(
      readFileSync(join(out, file), "utf8").matchAll(/\s(?:href|src|action|data-\w+)="(\/[^"]*)"/g),
      ([, path = ""]) => path,
    )
      .filter((path) => !path.startsWith(base) || path.startsWith(base + base.slice(1)))
      .map((path) => `${file}: ${path}`),
  );
  expect(outside).toEqual([]);
});

test("pages load all that they need, calculators wake, the search finds, and all of it without a network", async () => {
  const page = await newKeeper(host);
  const trouble: string[] = [];
  page.on("response", (response) => {
    if (response.status() >= 400) trouble.push(`${response.status()} ${response.url()}`);
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(host + base) && !request.url().startsWith("data:"))
      trouble.push(`outside: ${request.url()}`);
  });
  page.on("pageerror", (error) => trouble.push(error.message));

  await open(page, base);
  await page.locator("main a", { hasText: "All numbers" }).click();
  await page.locator("h1").waitFor();
  expect(new URL(page.url()).pathname).toBe(`${base}numbers/`);

  const calculator = `${base}numbers/cooler-effectiveness/`;
  await open(page, calculator);
  await page.locator("details.work > summary").click();
  await page.selectOption('select[id="cooler-effectiveness-core"]', { index: 2 });
  await page.locator("ol.steps > li[data-relation]").first().waitFor();
  expect(await page.locator("ol.steps").innerText()).not.toContain("could not be fetched");

  const find = async () => {
    await page.keyboard.press("Control+k");
    await page.fill("#finder-query", "density");
    const links = page.locator("#finder ol a");
    await links.first().waitFor();
    const paths = await links.evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).pathname));
    expect(paths).toContain(`${base}lessons/charge-density/`);
    expect(paths.filter((path) => !path.startsWith(base))).toEqual([]);
    await page.keyboard.press("Escape");
  };
  await find();

  await untilKept(page, calculator);
  await untilKept(page, `${base}pagefind/pagefind.js`);
  await page.context().setOffline(true);
  await open(page, calculator);
  await find();
  expect(trouble).toEqual([]);

  await page.goto(`${base}lessons/compression/`);
  await page.locator('[data-keep="asked"]').waitFor();
}, 120_000);
