import { describe, expect, test } from "vitest";
import { lessonPages, numberPages } from "./dist.ts";
import { newVisitor, notANumber, parse } from "./site.ts";

describe.each([...numberPages, ...lessonPages])("%s without JavaScript", (path) => {
  test("has example results, figures, formulas and working", async () => {
    const page = await newVisitor({ javaScriptEnabled: false });
    await page.goto(path);
    const main = page.locator("main");

    const results = await main.locator("[data-calculator] [data-result]").allTextContents();
    expect(results.length).toBeGreaterThan(0);
    for (const text of results) expect(parse(text), text).not.toBeNaN();
    expect(await main.innerText()).not.toMatch(notANumber);

    expect(await main.locator(".sym .katex").count()).toBeGreaterThan(0);
    expect(await main.locator("figure svg, figure table, figure dl").count()).toBeGreaterThan(0);
    const answers = await main
      .locator("input[type=text]")
      .evaluateAll((inputs) => inputs.map((i) => i.getAttribute("value")));
    expect(answers.filter((value) => value === null || value === "")).toEqual([]);

    // A conversion of units has no steps.
    if (path.includes("unit-converter")) return;
    const steps = main.locator("ol.steps > li");
    expect(await steps.count()).toBeGreaterThan(0);
    expect(await steps.locator(".in-symbols math").count()).toBe(await steps.count());
    const numbers = await steps.locator(".in-numbers [data-slot]").allTextContents();
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers.filter((text) => text.trim() === "" || notANumber.test(text))).toEqual([]);
  });

  test("says at each calculator that its fields do nothing", async () => {
    const page = await newVisitor({ javaScriptEnabled: false });
    await page.goto(path);
    const calculators = page.locator("main [data-calculator]");
    const told = calculators.locator("noscript p").filter({ visible: true });
    expect(await told.count()).toBe(await calculators.count());
    for (const says of await told.allTextContents()) expect(says).toContain("typing changes nothing");
  });

  test("shows no control that does nothing", async () => {
    const page = await newVisitor({ javaScriptEnabled: false });
    await page.goto(path);
    const dead = page.locator(".tools button, [data-find] button").filter({ visible: true });
    expect(await dead.allTextContents()).toEqual([]);
  });
});
