import { readFileSync } from "node:fs";
import { join } from "node:path";
import katex from "katex";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { parseCsv } from "../src/widgets/exports/parse-csv.ts";
import { violationsOf } from "./axe.ts";
import { textOf } from "./download.ts";
import { address, calculatorOn, choose, field, newVisitor, open, parse, resultsOf, sizes } from "./site.ts";

const id = "charge-path";

/** A visitor who lets the page copy, with a calculator opened and its further ways to copy unfolded by keyboard. */
async function visitorAtMenu(): Promise<Page> {
  const page = await newVisitor({
    permissions: ["clipboard-read", "clipboard-write"],
    acceptDownloads: true,
  });
  await open(page, `/numbers/${id}/`);
  await field(page, id, "r").fill("2.6");
  await page.locator(".exports > summary").focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Working as text" }).waitFor();
  return page;
}

const copied = async (page: Page, name: string): Promise<string> => {
  await page.getByRole("button", { name, exact: true }).press("Enter");
  await page.locator(".tools [role=status]", { hasText: "copied." }).waitFor();
  return page.evaluate(() => navigator.clipboard.readText());
};

const saved = async (page: Page, name: string) => {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name, exact: true }).press("Enter"),
  ]);
  const text = await textOf(download);
  return { name: download.suggestedFilename(), text };
};

const stepsOn = (page: Page) => page.locator("details.work ol > li").count();

describe("the working is copied by keyboard, every step of it", () => {
  test("as text", async () => {
    const page = await visitorAtMenu();
    const text = await copied(page, "Working as text");
    expect(text.match(/^\d+\. /gm)).toHaveLength(await stepsOn(page));
    expect(text).toContain("p_out = 2.6 ×");
    expect(text).toContain(`${address}/numbers/${id}/#v=2`);
  });

  test("as TeX", async () => {
    const page = await visitorAtMenu();
    const text = await copied(page, "Working as TeX");
    expect(text.match(/^\\item \\textbf/gm)).toHaveLength(await stepsOn(page));
    for (const [, tex = ""] of text.matchAll(/^\\\[ (.*) \\\]$/gm))
      katex.renderToString(tex, { displayMode: true, throwOnError: true });
  });

  test("as Markdown, of steps too that the page did not bring with it", async () => {
    const page = await visitorAtMenu();
    await choose(page, id, "humidity", "wet-bulb");
    await choose(page, id, "cooler", "none");
    const text = await copied(page, "Working as Markdown");
    expect(text.match(/^\d+\. \*\*/gm)?.length).toBeGreaterThan(10);
    expect(text).toContain(`](${address}/sources/#`);
  });
});

describe("state and results are saved as files", () => {
  test("CSV", async () => {
    const page = await visitorAtMenu();
    const { name, text } = await saved(page, "Save CSV");
    expect(name).toMatch(/^charge-path-\d{4}-\d\d-\d\d\.csv$/);
    const rows = parseCsv(text.replace(/^\ufeff/, ""));
    expect(rows.find(([part, of]) => part === "given" && of === "r")).toEqual(
      expect.arrayContaining(["2.6", "1", ""]),
    );
    const shown = await resultsOf(page, id);
    for (const [key, number] of Object.entries(shown)) {
      const row = rows.find(([part, of]) => part === "result" && of === key);
      expect(Number(row?.[3]), key).toBeCloseTo(parse(number), 9);
    }
  });

  test("JSON, which is copied too", async () => {
    const page = await visitorAtMenu();
    const { name, text } = await saved(page, "Save JSON");
    expect(name).toMatch(/\.json$/);
    expect(JSON.parse(text)).toMatchObject({
      calculator: id,
      linkVersion: 2,
      given: { r: { SI: { value: 2.6 } } },
    });
    expect(await copied(page, "JSON")).toBe(text);
  });

  test("with something that cannot be used there is a table of what was typed, and no results", async () => {
    const page = await visitorAtMenu();
    await field(page, id, "T_0").fill("=HYPERLINK(1)");
    const rows = parseCsv((await saved(page, "Save CSV")).text.replace(/^\ufeff/, ""));
    expect(rows.find(([, of]) => of === "T_0")?.[3]).toBe("'=HYPERLINK(1)");
    expect(rows.filter(([part]) => part === "result")).toEqual([]);
    expect(await page.getByRole("button", { name: "Working as text" }).isDisabled()).toBe(true);
  });
});

test("nothing of it is fetched before it is used", async () => {
  const page = await newVisitor();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await open(page, `/numbers/${id}/`);
  await field(page, id, "r").fill("2.6");
  await page.waitForLoadState("networkidle");
  expect(asked.filter((url) => /(copy-menu|compare|kept)[^/]*\.js$|formulas\.json$/.test(url))).toEqual([]);
  await page.locator(".exports > summary").click();
  await page.getByRole("button", { name: "Working as text" }).waitFor();
  expect(asked.some((url) => url.includes("copy-menu"))).toBe(true);
});

test("without a connection the working says that it could not be fetched", async () => {
  const page = await visitorAtMenu();
  await page.route("**/working/formulas.json", (route) => route.abort());
  await page.getByRole("button", { name: "Working as TeX", exact: true }).click();
  await page.locator(".tools [role=status]", { hasText: "could not be fetched" }).waitFor();
});

test("without leave to the clipboard the text is shown, to be copied by hand", async () => {
  const page = await visitorAtMenu();
  await page.evaluate(() =>
    Object.defineProperty(navigator, "clipboard", {
      value: { writeText: () => Promise.reject(new Error("no")) },
    }),
  );
  await page.getByRole("button", { name: "Working as text" }).click();
  const text = await page.getByLabel("Working as text, to be copied by hand").inputValue();
  expect(text.match(/^\d+\. /gm)).toHaveLength(await stepsOn(page));
});

test.each(sizes)("unfolded it has no violation, and fits, at $width", async (viewport) => {
  const page = await visitorAtMenu();
  await page.setViewportSize(viewport);
  expect(await violationsOf(page, ".tools")).toEqual([]);
  const isWider = () => document.documentElement.scrollWidth > document.documentElement.clientWidth;
  expect(await page.evaluate(isWider)).toBe(false);
});

interface Frozen {
  readonly holds: string;
  readonly calculator: string;
  readonly link: string;
}
const frozen: readonly Frozen[] = JSON.parse(
  readFileSync(join(import.meta.dirname, "../contracts/frozen-links.json"), "utf8"),
);

test("a link of any earlier version opens in full", async () => {
  const page = await newVisitor();
  for (const { calculator, link, holds } of frozen) {
    // Another page between them, so that each is opened and not only gone to.
    await page.goto("about:blank");
    await open(page, `/numbers/${calculator}/#${link}`);
    await page.waitForFunction(() => history.state?.draft !== undefined);
    const sheet = calculatorOn(page, calculator);
    expect(await sheet.getByText("in the link").count(), holds).toBe(0);
    const shown = Object.values(await resultsOf(page, calculator));
    expect(
      shown.filter((text) => text !== "—" && Number.isNaN(parse(text))),
      holds,
    ).toEqual([]);
    expect(shown.length).toBeGreaterThan(0);
  }
  // One page after another, and there is a link of every calculator.
}, 300_000);
