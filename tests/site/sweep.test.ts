import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { parseCsv } from "../src/widgets/exports/parse-csv.ts";
import { violationsOf } from "./axe.ts";
import { extremesOf, numberPages } from "./dist.ts";
import { textOf } from "./download.ts";
import { calculatorOn, field, newVisitor, notANumber, open, parse, resultsOf } from "./site.ts";

const id = "charge-path";
const path = `/numbers/${id}/`;
const part = (page: Page, name: string) => page.locator(`[id="${id}-sweep-${name}"]`);

async function opened(options = {}, at = path): Promise<Page> {
  const page = await newVisitor(options);
  await open(page, at);
  await page.locator(".tools").first().waitFor();
  await page.locator(".swept > summary").press("Enter");
  await page.locator(".swept figcaption").waitFor();
  await page.locator(".swept select").first().waitFor();
  return page;
}

const remarks = (page: Page) => page.locator(".swept .remarks > li").allInnerTexts();

test("curves, gap and its reason, table and file, by keyboard", async () => {
  const page = await opened({ acceptDownloads: true });
  await part(page, "along").selectOption("T_3");
  await part(page, "T_3-start").fill("10 °C");
  await part(page, "T_3-end").fill("90 °C");
  await expect.poll(() => remarks(page)).toHaveLength(1);
  const [cold = ""] = await remarks(page);
  expect(cold).toMatch(/^Up to 25\.0\s°C there is no curve: .*colder than the water/);

  await page.locator(".swept details > summary", { hasText: "table" }).press("Enter");
  const rows = await page.locator(".swept tbody tr").allInnerTexts();
  expect(rows).toHaveLength(11);
  expect(rows[0]).toMatch(/10\.0\s+—/);
  // 50 °C is both the example and a place of the table.
  const density = (await resultsOf(page, id))["rho_m"] ?? "";
  expect(rows.find((row) => row.startsWith("50.0"))).toContain(density);

  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save these numbers as CSV" }).press("Enter"),
  ]);
  const [head, ...lines] = parseCsv((await textOf(download)).replace("\ufeff", ""));
  expect(head?.[0]).toBe("Cooler outlet temperature (degC)");
  expect(lines).toHaveLength(41);
  const here = lines.find(([x]) => Number(x) === 50);
  expect(Number(here?.[1])).toBeCloseTo(parse(density), 2);
  expect(Number(here?.[2])).toBe(323.15);
  expect(lines[0]?.[1]).toBe("");
});

test("a family, and results beside each other, are curves with names", async () => {
  const page = await opened();
  await part(page, "family").selectOption("eta_s");
  await part(page, "members").selectOption("4");
  await part(page, "eta_s-start").fill("0.6");
  await part(page, "eta_s-end").fill("0.9");
  const names = () => page.locator(".swept .fig").innerText();
  for (const name of ["0.6000", "0.7000", "0.8000", "0.9000"]) await expect.poll(names).toContain(name);
  await part(page, "family").selectOption("");
  await part(page, "result").selectOption("T_2");
  const boxes = page.locator(".swept .beside input");
  await boxes.first().check();
  const label = await page.locator(".swept .beside label").first().innerText();
  await expect.poll(async () => (await names()).toLowerCase()).toContain(label.trim().toLowerCase());
});

test("the curve follows the fields, and an old one is marked", async () => {
  const page = await opened();
  const caption = () => page.locator(".swept figcaption").innerText();
  const flag = () => page.locator(".swept .fig svg").first().innerHTML();
  const before = await flag();
  await field(page, id, "r").fill("2.6");
  await expect.poll(flag).not.toBe(before);
  await field(page, id, "r").fill("rubbish");
  await expect.poll(caption).toContain("Not current.");
  await field(page, id, "r").fill("2.6");
  await expect.poll(caption).not.toContain("Not current.");
});

test("rubbish as an end gets a sentence, and the last curve stays", async () => {
  const page = await opened();
  await part(page, "along").selectOption("r");
  for (const text of ["abc", "1e999", "-3", "5 kg", "2 +", "", "9".repeat(200), "<b>", "0.2"]) {
    await part(page, "r-start").fill(text);
    await expect.poll(() => page.locator(`[id="${id}-sweep-r-start-msg"]`).innerText()).toMatch(/\.$/);
    expect(await page.locator(".swept").innerText(), text).not.toMatch(notANumber);
    expect(await page.locator(".swept .fig svg").count(), text).toBeGreaterThan(0);
  }
  await part(page, "r-start").fill("3");
  await part(page, "r-end").fill("2");
  const end = page.locator(`[id="${id}-sweep-r-end-msg"]`);
  await expect.poll(() => end.innerText()).toContain("A sweep ends above where it begins.");
  expect(await page.locator(".swept figcaption").innerText()).toContain("Not current.");
});

test("a sweep that is refused all along says so", async () => {
  const page = await opened();
  await part(page, "along").selectOption("T_3");
  await part(page, "T_3-start").fill("-20 °C");
  await part(page, "T_3-end").fill("10 °C");
  await expect
    .poll(async () => (await remarks(page)).join("\n"))
    .toMatch(/^All along there is no curve[^\n]*$/);
  expect(await page.locator(".swept").innerText()).not.toMatch(notANumber);
});

test("nothing scrolls sideways at 320 px, and nothing is out of reach", async () => {
  const page = await opened({ viewport: { width: 320, height: 700 } });
  await page.locator(".swept details > summary").click();
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBeLessThanOrEqual(0);
  expect(await violationsOf(page, ".swept")).toEqual([]);
});

test("each calculator has its example's curve without scripts", async () => {
  const page = await newVisitor({ javaScriptEnabled: false });
  for (const at of numberPages) {
    await page.goto(at);
    await page.locator(".swept > summary").click();
    const figure = page.locator(".swept .fig");
    expect(await figure.locator("svg").filter({ visible: true }).count(), at).toBe(1);
    expect(await figure.innerText(), at).not.toMatch(notANumber);
    expect(await page.locator(".swept select").count(), at).toBe(0);
  }
});

test("the live part takes the place of the drawn one", async () => {
  for (const at of extremesOf(numberPages)) {
    const page = await opened({ viewport: { width: 390, height: 844 } }, at);
    expect(await page.locator(".swept > div > .fig").count(), at).toBe(1);
    expect(await calculatorOn(page, at.split("/")[2] ?? "").innerText(), at).not.toMatch(notANumber);
    await page.context().close();
  }
}, 150_000);
