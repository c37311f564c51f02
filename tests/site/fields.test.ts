import { describe, expect, test } from "vitest";
import { numberPages } from "./dist.ts";
import { calculatorOn, choose, field, newVisitor, notANumber, open, parse, resultsOf } from "./site.ts";

// Every text redraws every chart. The contract of all calculators tries many more without a browser.
const rubbish = ["", "abc", "1e300", "−40", "3 psig", "<b>1</b>"];

describe.each(numberPages.map((path) => [path.split("/").at(-2) ?? "", path] as const))("%s", (id, path) => {
  test("whatever is typed gives numbers or a sentence, and never takes the old numbers away", async () => {
    const page = await newVisitor();
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(error.message));
    await open(page, path);
    const sheet = calculatorOn(page, id);
    const wrong: string[] = [];
    const tried = new Set<string>();
    let refused = 0;

    const tryAll = async () => {
      for (const name of await sheet
        .locator(".field input")
        .evaluateAll((inputs) => inputs.map((input) => input.id))) {
        if (tried.has(name)) continue;
        tried.add(name);
        // Typed inside the page, as a keyboard would tell it: each text then takes a frame and no journey.
        const all = await sheet.evaluate(
          async (element, { fieldId, texts }) => {
            const typeInto = (text: string) => {
              const input = element.querySelector<HTMLInputElement>(`input[id="${fieldId}"]`);
              if (!input) throw new Error(`${fieldId} is gone`);
              input.focus();
              input.value = text;
              input.dispatchEvent(new InputEvent("input", { bubbles: true }));
              return new Promise(requestAnimationFrame);
            };
            const before = element.querySelector<HTMLInputElement>(`input[id="${fieldId}"]`)?.value ?? "";
            const seen = [];
            for (const text of texts) {
              await typeInto(text);
              const entry = element.querySelector(`input[id="${fieldId}"]`);
              seen.push({
                typed: text,
                text: element.querySelector<HTMLElement>(".two")?.innerText ?? "",
                isInvalid: entry?.getAttribute("aria-invalid") === "true",
                says: document.getElementById(`${fieldId}-msg`)?.innerText ?? "",
                isStale: element.querySelector(".stale") !== null,
                hasSilentDash: [...element.querySelectorAll(".res > div")].some(
                  (row) =>
                    row.querySelector("output")?.textContent?.includes("—") && !row.querySelector(".says"),
                ),
                results: [...element.querySelectorAll("[data-result]")].map(
                  (output) => output.textContent ?? "",
                ),
              });
            }
            await typeInto(before);
            return seen;
          },
          { fieldId: name, texts: rubbish },
        );
        refused += all.filter(({ isInvalid }) => isInvalid).length;
        for (const seen of all) {
          const own = seen.text.replace(/“[^”]*”/g, "");
          const complaints = [
            notANumber.test(own) && "shows what is no number",
            seen.results.length === 0 && "has no results left",
            seen.results.some((shown) => !/^\[?—\]?$/.test(shown) && Number.isNaN(parse(shown))) &&
              `shows ${seen.results.join(", ")}`,
            seen.isStale &&
              seen.results.some((shown) => !/^\[.*\]$/.test(shown)) &&
              "leaves old numbers unmarked",
            seen.isStale && !seen.text.includes("Not current.") && "does not say that the numbers are old",
            !seen.isStale &&
              seen.results.some((shown) => shown.startsWith("[")) &&
              "marks new numbers as old",
            seen.isInvalid && !/\w.*\.(\s|$)/.test(seen.says) && "refuses without a sentence",
            seen.isInvalid && !seen.isStale && "refuses and computes all the same",
            seen.hasSilentDash && "leaves a result out and does not say why",
          ].filter((complaint) => complaint !== false);
          wrong.push(...complaints.map((complaint) => `“${seen.typed}” in ${name} ${complaint}`));
        }
      }
    };

    await tryAll();
    const choices = sheet.locator(".pick select");
    for (const name of await choices.evaluateAll((all) => all.map((choice) => choice.id))) {
      const choice = page.locator(`select[id="${name}"]`);
      if ((await choice.count()) === 0) continue;
      const chosen = await choice.inputValue();
      for (const option of await choice
        .locator("option")
        .evaluateAll((all) => all.map((o) => (o as HTMLOptionElement).value))) {
        await choice.selectOption(option);
        await tryAll();
      }
      await choice.selectOption(chosen);
    }
    expect(tried.size).toBeGreaterThan(0);
    // Every field refuses words, at the least.
    expect(refused).toBeGreaterThan(tried.size);
    expect(wrong.join("\n")).toBe("");
    expect(errors).toEqual([]);
    // Every text in every field with every option of every choice takes its time.
  }, 240_000);
});

describe("what is impossible is named with the bound", () => {
  const says = async (
    calculator: string,
    choices: Readonly<Record<string, string>>,
    id: string,
    text: string,
  ) => {
    const page = await newVisitor();
    await open(page, `/numbers/${calculator}/`);
    for (const [key, option] of Object.entries(choices)) await choose(page, calculator, key, option);
    await field(page, calculator, id).fill(text);
    return (await page.locator(`#${calculator}-${id}-msg`).innerText()).replace(/[\u00a0\u202f]/g, " ");
  };

  test.each([
    [
      "a gauge reading entered as an absolute outlet pressure",
      "compressor-outlet",
      { boost: "pressure" },
      "p_out",
      "90",
      /99\.00 kPa|inlet/,
    ],
    [
      "a vacuum below zero absolute",
      "compressor-outlet",
      {},
      "p_in",
      "-16 psi gauge",
      /perfect vacuum.*(−14\.50|barometer)/,
    ],
    [
      "a negative absolute pressure",
      "compressor-outlet",
      {},
      "p_in",
      "-5 kPa absolute",
      /perfect vacuum|absolute/,
    ],
    [
      "relative humidity above 100 %",
      "charge-path",
      { humidity: "relative" },
      "varphi_0",
      "110 %",
      /110 % cannot be used here. Accepted: 0.* to (100 %|1)\./,
    ],
    ["an efficiency above 1", "charge-path", {}, "eta_s", "1.2", /to 1\./],
    ["a pressure ratio below 1", "charge-path", {}, "r", "0.9", /Accepted: 1 to/],
    ["below absolute zero", "charge-path", {}, "T_0", "-300 °C", /absolute zero.*−273\.15/],
    ["a cooler outlet hotter than its inlet", "charge-path", {}, "T_3", "200", /126|hotter/],
  ] as const)("%s", async (_, calculator, choices, id, text, pattern) => {
    expect(await says(calculator, choices, id, text)).toMatch(pattern);
  });
});

test("old numbers stay, in brackets, and say that they are old", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  const before = await resultsOf(page, "charge-path");
  await field(page, "charge-path", "r").fill("two");
  const after = await resultsOf(page, "charge-path");
  expect(Object.keys(after)).toEqual(Object.keys(before));
  for (const [key, shown] of Object.entries(after)) expect(shown).toBe(`[${before[key]}]`);
  const sign = calculatorOn(page, "charge-path").locator(".stale").filter({ hasText: "Not current." });
  expect(await sign.isVisible()).toBe(true);
  await field(page, "charge-path", "r").fill("2.2");
  expect(await resultsOf(page, "charge-path")).toEqual(before);
  expect(await sign.count()).toBe(0);
});

test("every value is an example until it is touched, and the result too", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/compressor-outlet/");
  const sheet = calculatorOn(page, "compressor-outlet");
  const marks = sheet.locator("dd .eg");
  expect(await marks.count()).toBeGreaterThan(0);
  for (const id of await sheet
    .locator(".field input")
    .evaluateAll((inputs) => inputs.map((input) => input.id))) {
    const input = page.locator(`input[id="${id}"]`);
    await input.fill(await input.inputValue());
    await input.press("End");
    await input.press("0");
    await input.press("Backspace");
  }
  expect(await sheet.getByText("All values are yours").count()).toBe(1);
  expect(await marks.count()).toBe(0);
});
