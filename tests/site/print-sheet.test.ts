import jsQR from "jsqr";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { extremesOf, numberPages } from "./dist.ts";
import { field, newVisitor, notANumber, open, parse, resultsOf } from "./site.ts";

/** What stands between the margins of print.css, in CSS pixels: 96 to the inch. */
const papers = [
  { format: "A4", box: [595, 842], width: 661 },
  { format: "Letter", box: [612, 792], width: 684 },
] as const;

/** A page whose dialog for printing is ours, with its sheet asked for on paper. */
async function printed(path: string, prepare?: (page: Page) => Promise<unknown>): Promise<Page> {
  const page = await newVisitor({ viewport: { width: papers[0].width, height: 1000 } });
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute("data-printed", "");
  });
  await open(page, path);
  await page.locator("details.later").first().waitFor();
  await prepare?.(page);
  await page.getByRole("button", { name: "Print", exact: true }).click();
  await page.locator("html[data-printed]").waitFor();
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  return page;
}

/** What a phone's camera would read off the code: by another library than drew it. */
async function scanned(page: Page): Promise<string | undefined> {
  const shot = (await page.locator(".code").screenshot()).toString("base64");
  const { data, width, height } = await page.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const canvas = document.createElement("canvas");
    // Twice as large, since a screen has fewer dots than a printer.
    canvas.width = 2 * image.width;
    canvas.height = 2 * image.height;
    const context = canvas.getContext("2d") as CanvasRenderingContext2D;
    context.imageSmoothingEnabled = false;
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    return { data: Array.from(data), width: canvas.width, height: canvas.height };
  }, shot);
  return jsQR(Uint8ClampedArray.from(data), width, height)?.data;
}

const address = (page: Page) => page.locator(".origin .address").innerText();

const extremes = extremesOf(numberPages);

describe.each(numberPages)("%s as a sheet", (path) => {
  test("has inputs, results, working, sources, barometer and link, on either paper", async () => {
    const page = await printed(path);
    const id = path.split("/")[2] ?? "";
    for (const [key, text] of Object.entries(await resultsOf(page, id)))
      if (text !== "—") expect(parse(text), key).not.toBeNaN();
    expect(await page.locator(".give .entry").filter({ visible: true }).count()).toBeGreaterThan(0);
    const steps = page.locator(".steps > li");
    if ((await steps.count()) > 0) {
      expect(await steps.filter({ visible: true }).count()).toBe(await steps.count());
      const cited = await page
        .locator(".steps .from a")
        .evaluateAll((links) => links.map((link) => Number((link as HTMLElement).dataset["cite"])));
      const sources = await page.locator(".on-paper .sources > li").allInnerTexts();
      expect(Math.max(...cited)).toBe(sources.length);
      for (const line of sources) expect(line).toMatch(/\w{3}.*\.$/s);
    }
    const text = await page.locator("main").innerText();
    expect(text).not.toMatch(notANumber);
    expect(text).toMatch(/Barometer.*an example, not your reading/s);
    expect(await address(page)).toContain(`${path}#v=`);
    // Beside the sheet there is its title, and nothing else.
    const others = page.locator(".main > :not(.opening, .sheet), .head, .foot, .tools, .index");
    expect(await others.filter({ visible: true }).count()).toBe(0);
    for (const { width } of papers) {
      await page.setViewportSize({ width, height: 1000 });
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBeLessThanOrEqual(0);
      const cut = await page
        .locator(".steps .calc")
        .evaluateAll((formulas) =>
          formulas.filter((one) => one.scrollWidth > one.clientWidth + 1).map((one) => one.textContent),
        );
      expect(cut).toEqual([]);
    }
    // The second paper is tried with the shortest sheet and the longest.
    for (const { format, box } of extremes.includes(path) ? papers : papers.slice(0, 1)) {
      const made = (await page.pdf({ format, preferCSSPageSize: true })).toString("latin1");
      const count = (made.match(/\/Type\s*\/Page\b/g) ?? []).length;
      expect(count).toBeGreaterThan(0);
      expect(count).toBeLessThan(14);
      const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(made) ?? [];
      expect(Math.abs(Number(width) - box[0])).toBeLessThan(1.5);
      expect(Math.abs(Number(height) - box[1])).toBeLessThan(1.5);
    }
    // A document made is a document printed: the page is as it was.
    expect(await page.locator(".on-paper").count()).toBe(0);
    expect(await page.locator("html.one-sheet").count()).toBe(0);
    expect(await page.locator("details.work[open]").count()).toBe(0);
    await page.context().close();
  });
});

const path = "/numbers/charge-path/";
const id = "charge-path";

test("the link on the paper opens what is on the paper", async () => {
  const page = await printed(path, (before) => field(before, id, "r").fill("2.75"));
  const results = await resultsOf(page, id);
  const link = await scanned(page);
  const again = await newVisitor();
  await again.goto(link ?? "");
  await again.locator(`[data-result="T_2"]`, { hasText: results["T_2"] ?? "" }).waitFor();
  expect(await field(again, id, "r").inputValue()).toBe("2.75");
});

// Humid air brings steps that this page does not hold.
const withHumidity = (page: Page) => page.locator(`[id="${id}-humidity"]`).selectOption({ index: 1 });

test("what cannot be fetched is named, and the rest is printed", async () => {
  const page = await printed(path, async (before) => {
    await before.route("**/working/**", (route) => route.abort());
    await withHumidity(before);
  });
  const text = await page.locator("main").innerText();
  expect(text).toContain("The formula of this step could not be fetched. Its result is");
  expect(text).toMatch(/list of sources could not be fetched. It stands at http.*\/sources\//);
  expect(await scanned(page)).toBe(await address(page));
});

test("what does not arrive is waited for, but not for ever", async () => {
  const page = await printed(path, async (before) => {
    await before.route("**/working/**", () => {});
    await withHumidity(before);
  });
  expect(await page.locator(".on-paper").innerText()).toContain("The working did not arrive in time");
  expect(await page.locator(".steps > li").filter({ visible: true }).count()).toBe(0);
  expect(await scanned(page)).toBe(await address(page));
});

test("where the part for paper cannot be fetched, the page is printed", async () => {
  const page = await newVisitor();
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute("data-printed", "");
  });
  await page.route("**/print-sheet*", (route) => route.abort());
  await open(page, path);
  await page.waitForLoadState("networkidle");
  await page.getByRole("button", { name: "Print", exact: true }).click();
  await page.locator("html[data-printed]").waitFor();
  expect(await page.locator(".on-paper").count()).toBe(0);
});

test("an old result is not printed as a new one", async () => {
  const page = await printed(path, (before) => field(before, id, "r").fill("0.2"));
  expect(await page.locator("main").innerText()).toContain("Not current.");
  expect((await resultsOf(page, id))["rho_m"]).toMatch(/^\[/);
});
