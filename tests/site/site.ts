import { type Browser, type BrowserContextOptions, chromium, type Locator, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, inject } from "vitest";

export const address: string = inject("address");

export const sizes = [
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1440, height: 900 },
] as const;

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.connect(inject("browser"));
});
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
});
afterAll(() => browser.close());

/** A page of a visitor who was never here, and for whom nothing is kept unless asked. Closed after the test. */
export async function newVisitor(options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ baseURL: address, serviceWorkers: "block", ...options });
  context.setDefaultTimeout(20_000);
  return context.newPage();
}

/** Goes to an address, and waits until what wakes at once is awake: Preact leaves its tree on what it has woken. */
export async function open(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.waitForFunction(() =>
    [...document.querySelectorAll('[data-settings], [data-wake="at once"] [data-sheet]')].every(
      (element) => "__k" in element,
    ),
  );
}

export const calculatorOn = (page: Page, id: string): Locator => page.locator(`[data-calculator="${id}"]`);

/** The field of a calculator, by its id. */
export const field = (page: Page, calculator: string, id: string): Locator =>
  page.locator(`input[id="${calculator}-${id}"]`);

export async function choose(page: Page, calculator: string, id: string, option: string): Promise<void> {
  await page.selectOption(`select[id="${calculator}-${id}"]`, option);
}

/** The text of every result that is shown, by id. */
export const resultsOf = (page: Page, calculator: string): Promise<Record<string, string>> =>
  calculatorOn(page, calculator)
    .locator("[data-result]")
    .evaluateAll((outputs) =>
      Object.fromEntries(
        outputs.map((output) => [output.getAttribute("data-result") ?? "", output.textContent ?? ""]),
      ),
    );

/** A number as the site shows it. `parse("−1.2 × 10⁻³")` is -0.0012. */
export function parse(shown: string): number {
  const plain = shown
    .replace(/[[\]\u00a0\u202f\s]/g, "")
    .replaceAll("−", "-")
    .replace(/×10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/, (_, power: string) => {
      const digits = [...power].map((c) => (c === "⁻" ? "-" : "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c))).join("");
      return `e${digits}`;
    });
  return plain === "" ? Number.NaN : Number(plain);
}

/** What no reader should ever see. */
export const notANumber = /\b(NaN|Infinity|undefined|null)\b|∞|\[object/;
