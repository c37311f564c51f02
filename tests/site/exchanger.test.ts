import { describe, expect, test } from "vitest";
import { enter, expectShown } from "./entered.ts";
import { calculatorOn, choose, field, newVisitor, notANumber, open, parse, resultsOf } from "./site.ts";

const boat = {
  choices: { core: "counter-cross-2", coolant: "seawater" },
  values: { UA: "3400 W/K", m_a: "0.85", T_2: "190", T_w_in: "28", S: "3.5 %", m_w: "6.0" },
};

// A pilot boat's cooler, from a program written independently of this one (open reference read).
test("a cooler is rated, and swapped hoses cost what they cost", async () => {
  const page = await newVisitor();
  await enter(page, "cooler-rating", boat.choices, boat.values);
  expectShown(await resultsOf(page, "cooler-rating"), {
    T_3: 31.851,
    Q: 136.165,
    T_w_out: 33.669,
    P: 0.97623,
    NTU: 3.949,
    R: 0.03585,
  });
  const figure = calculatorOn(page, "cooler-rating").locator("figure.fig").first();
  await figure.getByText("190.0").first().waitFor();
  await choose(page, "cooler-rating", "hoses", "swapped");
  expectShown(await resultsOf(page, "cooler-rating"), {
    T_3: 35.931,
    Q: 132.678,
    T_w_out: 33.524,
    P: 0.95104,
  });
  await figure.getByText("35.9").first().waitFor();
});

test("the size for a wanted temperature, and the sentence where no size is enough", async () => {
  const page = await newVisitor();
  const { UA: _, ...streams } = boat.values;
  await enter(page, "cooler-size", boat.choices, { ...streams, T_3: "42" });
  expectShown(await resultsOf(page, "cooler-size"), { UA: 2180.2 });
  await field(page, "cooler-size", "T_3").fill("27");
  const sheet = calculatorOn(page, "cooler-size");
  expect(await sheet.locator('[id="cooler-size-T_3-msg"]').textContent()).toContain("28\u00a0°C");
  await choose(page, "cooler-size", "hoses", "swapped");
  await field(page, "cooler-size", "m_w").fill("0.8");
  await field(page, "cooler-size", "T_3").fill("45");
  const says = (await sheet.locator('[id="cooler-size-T_3-msg"]').textContent()) ?? "";
  expect(says).toContain("No size");
  // The bound that the sentence names can be reached, and a little below it cannot.
  const bound = parse(/([\d.]+)\s°C\.$/.exec(says)?.[1] ?? "");
  await field(page, "cooler-size", "T_3").fill(String(bound + 0.2));
  expect(parse((await resultsOf(page, "cooler-size"))["UA"] ?? "")).toBeGreaterThan(0);
});

test("working of an arrangement that the example does not use is fetched", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/cooler-rating/");
  const work = calculatorOn(page, "cooler-rating").locator("details.work");
  await work.locator("summary").click();
  await choose(page, "cooler-rating", "core", "cross-unmixed");
  const step = work.locator('[data-relation="exchanger/effectiveness/cross-unmixed"]').first();
  await step.waitFor();
  expect(await step.locator("math").count()).toBeGreaterThan(0);
  expect(await step.locator(".in-numbers").textContent()).not.toMatch(notANumber);
  expect(await work.locator("ol.steps > li").count()).toBe(
    parse(((await work.locator("[data-step-count]").textContent()) ?? "").replace(/ .*/, "")),
  );
});

test("a formula that cannot be fetched leaves the other steps and the result of its own", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/cooler-rating/");
  await page.route("**/working/**", (route) => route.abort());
  const work = calculatorOn(page, "cooler-rating").locator("details.work");
  await work.locator("summary").click();
  await choose(page, "cooler-rating", "core", "shell-1-2");
  await work.getByText("could not be fetched").first().waitFor();
  const { P = "" } = await resultsOf(page, "cooler-rating");
  expect(await work.getByText("could not be fetched").first().textContent()).toContain(P.slice(0, 5));
});

test("readings that cannot be: each is told at its field, with the bound", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/cooler-effectiveness/");
  const told = async (key: string, text: string) => {
    const input = field(page, "cooler-effectiveness", key);
    const before = await input.inputValue();
    await input.fill(text);
    const says = await calculatorOn(page, "cooler-effectiveness")
      .locator(`[id="cooler-effectiveness-${key}-msg"]`)
      .textContent();
    await input.fill(before);
    return says ?? "";
  };
  expect(await told("T_3", "20")).toContain("22\u00a0°C");
  expect(await told("T_3", "185")).toContain("185\u00a0°C");
  expect(await told("T_w_out", "21")).toContain("22\u00a0°C");
  expect(await told("T_w_out", "186")).toContain("185\u00a0°C");
  expect(await told("m_w", "0")).toMatch(/kg\/s/);
});

describe("every arrangement", () => {
  test("stands in the comparison with a number, and the chosen one is marked", async () => {
    const page = await newVisitor();
    await enter(page, "arrangements", { core: "counter-cross-2" }, { NTU: "3", R: "1" });
    const table = calculatorOn(page, "arrangements").locator("table.ranking");
    // Counterflow at NTU 3 and R 1 is 3/4. The table waits until typing rests.
    await expect.poll(() => table.locator("tr").first().textContent()).toContain("0.7500");
    const rows = await table.locator("tr").allTextContents();
    expect(rows.length).toBeGreaterThan(30);
    for (const row of rows) expect(parse(/0\.\d+$/.exec(row.trim())?.[0] ?? "")).toBeGreaterThan(0);
    expect(await table.locator("b").textContent()).toContain("chosen");
  });

  test("shows its picture and its hoses when it is chosen", async () => {
    const page = await newVisitor();
    await open(page, "/numbers/cooler-rating/");
    const cores = await page
      .locator('select[id="cooler-rating-core"] option')
      .evaluateAll((options) => options.map((option) => option.getAttribute("value") ?? ""));
    const seen = new Set<string>();
    for (const core of cores) {
      await choose(page, "cooler-rating", "core", core);
      const figure = calculatorOn(page, "cooler-rating").locator("figure.fig").first();
      await figure.locator("svg").first().waitFor({ state: "attached" });
      const label = (await figure.locator("svg").first().getAttribute("aria-label")) ?? "";
      expect(label).not.toMatch(notANumber);
      seen.add((await calculatorOn(page, "cooler-rating").locator(".chosen").textContent()) ?? "");
    }
    expect(seen.size).toBe(cores.length);
  });
});
