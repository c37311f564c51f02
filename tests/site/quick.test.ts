import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { quickPages } from "./dist.ts";
import { field, newVisitor, notANumber, open, parse, resultsOf } from "./site.ts";

const phone = { width: 390, height: 700 };
const withKeypad = { width: 390, height: 360 };

const idOn = async (page: Page): Promise<string> =>
  (await page.locator(".quick").getAttribute("data-calculator")) ?? "";

const box = (one: Locator) =>
  one.evaluate((element) => {
    const { top, bottom, width, height } = element.getBoundingClientRect();
    return { top, bottom, width, height };
  });

/** The switch of a question, and the option it is turned to. */
const turnTo = (page: Page, calculator: string, option: string) =>
  page.locator(`label:has(> input[id="${calculator}-find-${option}"])`).click();

test("there are ten, listed first on the home page and over all numbers", async () => {
  expect(quickPages).toHaveLength(10);
  const page = await newVisitor();
  for (const path of ["/", "/numbers/"]) {
    await open(page, path);
    const list = page.locator("main ul.leader").first();
    const links = await list
      .locator("a")
      .evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).pathname));
    expect([...links].sort()).toEqual([...quickPages].sort());
    expect(await list.locator(".end .katex").count()).toBe(10);
    const heights = await list
      .locator("a")
      .evaluateAll((all) => all.map((a) => a.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
  }
});

describe.each(quickPages)("%s", (path) => {
  test("stands on one screen of a phone", async () => {
    const page = await newVisitor({ viewport: phone });
    await open(page, path);
    const strip = await box(page.locator(".quick .get"));
    const last = await box(page.locator(".quick .field").last());
    expect(last.bottom).toBeLessThanOrEqual(strip.top);
    expect(strip.bottom).toBeLessThanOrEqual(phone.height);
    expect(strip.bottom).toBeGreaterThan(phone.height - 2);
    expect((await box(page.locator("h1"))).top).toBeGreaterThanOrEqual(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
  });

  test("keeps the answer over the keypad, and each field in use over the answer", async () => {
    const page = await newVisitor({ viewport: phone });
    await open(page, path);
    const fields = page.locator('.quick .field input[type="text"]');
    await page.setViewportSize(withKeypad);
    for (const one of await fields.all()) {
      await one.focus();
      await page.evaluate(() => new Promise(requestAnimationFrame));
      const strip = await box(page.locator(".quick .get"));
      const output = await box(page.locator(".quick .answer output"));
      const used = await box(one);
      expect(strip.bottom).toBeLessThanOrEqual(withKeypad.height);
      expect(output.top).toBeGreaterThanOrEqual(0);
      expect(used.top).toBeGreaterThanOrEqual(0);
      expect(used.bottom).toBeLessThanOrEqual(strip.top + 0.5);
    }
  });

  test("has targets of 48 px", async () => {
    const page = await newVisitor({ viewport: phone });
    await open(page, path);
    const targets = page
      .locator(".quick :is(input[type=text], select, button, a, .switch label)")
      .filter({ visible: true });
    const small = await targets.evaluateAll((all) =>
      all
        .map((one) => (one.closest(".entry") ?? one).getBoundingClientRect())
        .map(({ width, height }) => `${width} × ${height}`)
        .filter((size) => size.split(" × ").some((side) => Number(side) < 48)),
    );
    expect(await targets.count()).toBeGreaterThan(3);
    expect(small).toEqual([]);
  });

  test("cuts no example value and no unit, in either system", async () => {
    const page = await newVisitor({ viewport: { width: 360, height: 700 } });
    await open(page, path);
    await page.evaluate(() => document.fonts.ready);
    for (const system of ["us", "metric"]) {
      await page.selectOption(".head .units select", system);
      const cut = await page
        .locator('.quick .field input[type="text"]')
        .evaluateAll((all) =>
          (all as HTMLInputElement[])
            .filter((input) => input.scrollWidth > input.clientWidth)
            .map(({ id, value }) => `${id} ${value}`),
        );
      expect(cut).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    }
  });

  test("says a sentence at each field that holds rubbish, and keeps the old answer marked", async () => {
    const page = await newVisitor({ viewport: phone });
    await open(page, path);
    const id = await idOn(page);
    const before = await resultsOf(page, id);
    for (const one of await page.locator('.quick .field input[type="text"]').all()) {
      const example = await one.inputValue();
      for (const rubbish of ["rubbish", "", "1e99"]) {
        await one.fill(rubbish);
        const says = page.locator(`[id="${await one.getAttribute("id")}-msg"]`);
        expect(await says.innerText()).toMatch(/^\S[\s\S]+\.$/);
        expect(await page.locator(".quick .get .stale").innerText()).toMatch(/^Not current\./);
        expect(Object.values(await resultsOf(page, id))).toEqual(Object.values(before).map((x) => `[${x}]`));
        expect(await page.locator(".quick .get button").isDisabled()).toBe(true);
      }
      expect(await page.locator(".quick").innerText()).not.toMatch(notANumber);
      await one.fill(example);
    }
    expect(await page.locator(".quick .get .stale").count()).toBe(0);
  });

  test("copies one line with all that is needed, whose link opens it again", async () => {
    const page = await newVisitor({ viewport: phone });
    await open(page, path);
    await page.evaluate(() =>
      Object.defineProperty(navigator, "clipboard", {
        value: {
          writeText: async (text: string) => {
            document.documentElement.dataset["copied"] = text;
          },
        },
      }),
    );
    const id = await idOn(page);
    const first = page.locator('.quick .field input[type="text"]').first();
    // The example typed over: now it is the visitor's own.
    const typed = String(parse(await first.inputValue()) * 1.01);
    await first.fill(typed);
    await page.getByRole("button", { name: "Copy answer" }).click();
    await page.locator(".quick [role=status]").filter({ hasText: "Answer copied." }).waitFor();
    const line = (await page.locator("html").getAttribute("data-copied")) ?? "";
    expect(line).not.toContain("\n");
    expect(line.startsWith((await page.locator(".lead").textContent()) ?? "?")).toBe(true);
    const labels = await page
      .locator(".quick .field > :is(label, span)")
      .evaluateAll((all) => all.map((one) => (one.firstChild?.textContent ?? "").trim()));
    for (const label of labels) expect(line).toContain(`${label}: `);
    for (const value of Object.values(await resultsOf(page, id)))
      expect(line).toContain(value.replaceAll("\u00a0", " "));
    const unit = page.locator(".quick .field .unit").first();
    const unitText = await unit.evaluate((one) =>
      one instanceof HTMLSelectElement ? one.selectedOptions[0]?.text : one.textContent,
    );
    expect(line).toContain(unitText ?? "?");
    if (labels.includes("Barometer")) expect(line).toMatch(/Barometer: [\d.]+ kPa/);

    const link = /https?:\S+$/.exec(line)?.[0] ?? "";
    expect(new URL(link).pathname).toBe(path);
    const other = await newVisitor({ viewport: phone });
    await open(other, link);
    await expect.poll(() => resultsOf(other, id), { timeout: 20_000 }).toEqual(await resultsOf(page, id));
    expect(await other.locator('.quick .field input[type="text"]').first().inputValue()).toBe(typed);
    expect(await other.evaluate(() => localStorage.length)).toBe(0);
    expect(await other.locator(".quick .note").count()).toBe(await page.locator(".quick .note").count());
  });

  test("leads to the whole calculator with its values", async () => {
    const page = await newVisitor({ viewport: phone });
    await open(page, path);
    const id = await idOn(page);
    const first = page.locator('.quick .field input[type="text"]').first();
    const typed = String(parse(await first.inputValue()) * 1.01);
    await first.fill(typed);
    const here = await resultsOf(page, id);
    const href =
      (await page.getByRole("link", { name: "Every step of the working" }).getAttribute("href")) ?? "";
    const whole = await newVisitor();
    await open(whole, href);
    expect(new URL(whole.url()).pathname).toBe(`/numbers/${id}/`);
    const same = whole.locator(`input[id="${await first.getAttribute("id")}"]`);
    await expect.poll(() => same.inputValue(), { timeout: 20_000 }).toBe(typed);
    const there = await resultsOf(whole, id);
    // The converter answers in the unit of the other system.
    if (id !== "unit-converter")
      for (const [key, value] of Object.entries(here)) expect([key, there[key]]).toEqual([key, value]);
    expect(await whole.locator("[role=status].note").count()).toBe(0);
  });

  test("shows its example without JavaScript, and no dead button", async () => {
    const page = await newVisitor({ javaScriptEnabled: false, viewport: phone });
    await page.goto(path);
    const results = await page.locator(".quick [data-result]").allTextContents();
    expect(results.length).toBeGreaterThan(0);
    for (const text of results) expect(parse(text), text).not.toBeNaN();
    expect(await page.locator(".quick noscript p").innerText()).toContain("typing changes nothing");
    expect(await page.locator(".quick button").filter({ visible: true }).count()).toBe(0);
    expect(await page.getByRole("link", { name: "Every step of the working" }).getAttribute("href")).toMatch(
      /^\/numbers\/[\w-]+\/#v=2/,
    );
  });

  test("stands side by side on a wide screen, and has its answer on paper", async () => {
    const page = await newVisitor({ viewport: { width: 1440, height: 900 } });
    await open(page, path);
    const [give, get] = [await box(page.locator(".quick .give")), await box(page.locator(".quick .get"))];
    expect(Math.abs(give.top - get.top)).toBeLessThan(2);
    expect(give.width).toBeLessThan(700);
    await page.setViewportSize({ width: 660, height: 980 });
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("button, .quick a").filter({ visible: true }).count()).toBe(0);
    expect(await page.locator(".quick .answer output").isVisible()).toBe(true);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide).toBeLessThanOrEqual(0);
  });
});

test.each([
  ["power-air", ["air", "power"], ["W_e", "m_da"]],
  ["boost-ratio", ["ratio", "boost"], ["p_g", "r"]],
] as const)("%s turns round and comes back", async (calculator, [there, back], [given, found]) => {
  const page = await newVisitor({ viewport: phone });
  await open(page, `/quick/${calculator}/`);
  for (const one of await page.locator('.quick .field input[type="text"]').all())
    await one.fill(await one.inputValue());
  const start = await field(page, calculator, given).inputValue();
  const [answer = ""] = Object.values(await resultsOf(page, calculator));
  await turnTo(page, calculator, back);
  expect(parse(await field(page, calculator, found).inputValue())).toBeCloseTo(parse(answer), 2);
  const [turned = ""] = Object.values(await resultsOf(page, calculator));
  expect(parse(turned) / parse(start)).toBeCloseTo(1, 3);
  await turnTo(page, calculator, there);
  expect(parse(await field(page, calculator, given).inputValue()) / parse(start)).toBeCloseTo(1, 3);
  expect(Object.values(await resultsOf(page, calculator))[0]).toBe(answer);
});

test("the switch works by the arrows, and its state stands in the address", async () => {
  const page = await newVisitor({ viewport: phone });
  await open(page, "/quick/boost-ratio/");
  await page.locator("#boost-ratio-at-outlet").focus();
  await page.keyboard.press("ArrowRight");
  expect(await field(page, "boost-ratio", "Delta_p_23").isVisible()).toBe(true);
  await page.waitForFunction(() => location.hash.includes("boost-ratio.at=cooler"));
  await page.reload();
  await field(page, "boost-ratio", "Delta_p_23").waitFor();
  expect(await page.locator("#boost-ratio-at-cooler").isChecked()).toBe(true);
});

test("the unit of the answer is chosen beside it, and goes with the link", async () => {
  const page = await newVisitor({ viewport: phone });
  await open(page, "/quick/hot-air/");
  const unit = page.locator(".quick .answer select");
  const celsius = parse((await resultsOf(page, "compressor-outlet"))["T_out"] ?? "");
  await unit.selectOption("degF");
  const shown = async (on: Page) => parse((await resultsOf(on, "compressor-outlet"))["T_out"] ?? "");
  expect(await shown(page)).toBeCloseTo(celsius * 1.8 + 32, -1);
  await page.waitForFunction(() => location.hash.includes("T_out.in=degF"));
  const other = await newVisitor({ viewport: phone });
  await open(other, page.url());
  await expect.poll(() => shown(other)).toBe(await shown(page));
});

test("a power of ten with a long unit makes the page no wider", async () => {
  const page = await newVisitor({ viewport: phone });
  await open(page, "/quick/units/");
  const kind = page.locator(".quick select").first();
  const kinds = await kind
    .locator("option")
    .evaluateAll((all) => all.map((one) => one.getAttribute("value")));
  const tooWide: string[] = [];
  for (const one of kinds) {
    await kind.selectOption(one);
    await field(page, "unit-converter", one ?? "").fill("123456789");
    const unit = page.locator(".quick .answer select");
    for (const shown of await unit
      .locator("option")
      .evaluateAll((all) => all.map((o) => o.getAttribute("value")))) {
      await unit.selectOption(shown);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (over > 0) tooWide.push(`${one} in ${shown}: ${over}`);
    }
  }
  expect(tooWide).toEqual([]);
});

test("a page without leave to the clipboard shows the line to be copied by hand", async () => {
  const page = await newVisitor({ viewport: phone });
  await open(page, "/quick/barometer/");
  await page.evaluate(() =>
    Object.defineProperty(navigator, "clipboard", {
      value: { writeText: () => Promise.reject(new Error("no")) },
    }),
  );
  await page.getByRole("button", { name: "Copy answer" }).click();
  const text = await page.getByLabel("Answer, to be copied by hand").inputValue();
  expect(text).toContain("Elevation: 110.0 m (example value)");
  expect(text).toContain("/quick/barometer/#v=2");
});

test("a gauge in a field brings the barometer into the copied line", async () => {
  const page = await newVisitor({ viewport: phone });
  await open(page, "/quick/loss-at-flow/");
  await page.evaluate(() =>
    Object.defineProperty(navigator, "clipboard", {
      value: { writeText: () => Promise.reject(new Error("no")) },
    }),
  );
  const lineOf = async () => {
    await page.getByRole("button", { name: "Copy answer" }).click();
    return page.getByLabel("Answer, to be copied by hand").inputValue();
  };
  expect(await lineOf()).not.toContain("Barometer");
  await page.getByLabel("Unit of engine pressure before").selectOption("psi-g");
  // What was copied before no longer stands there.
  await page.getByLabel("Answer, to be copied by hand").waitFor({ state: "detached" });
  expect(await lineOf()).toContain("Barometer: 100.0 kPa (example value)");
});

test("what somebody has and wants finds the pages, the one that asks least first", async () => {
  const page = await newVisitor({ viewport: phone });
  await open(page, "/numbers/");
  const form = page.locator("[data-have-and-want]");
  const says = form.locator("[role=status]");
  const found = () =>
    form.locator("a").evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).pathname));
  await page.getByLabel("I have").selectOption({ label: "boost on the gauge" });
  expect(await found()).toEqual([]);
  await page.getByLabel("I want").selectOption({ label: "pressure ratio" });
  await expect.poll(async () => (await found())[0]).toBe("/quick/boost-ratio/");
  expect(await says.innerText()).toMatch(/take/);
  await page.getByLabel("I have").selectOption({ label: "power at the crankshaft" });
  await page.getByLabel("I want").selectOption({ label: "air flow" });
  await expect.poll(async () => (await found())[0]).toBe("/quick/power-air/");
  expect(await found()).toContain("/numbers/air-demand/");
  const counts = await form.locator(".end").allTextContents();
  const numbers = counts.map((text) => Number.parseInt(text.replace("nothing", "0"), 10));
  expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  await page.getByLabel("I want").selectOption({ label: "power at the crankshaft" });
  await expect.poll(() => says.innerText()).toContain("already");
  await page.getByLabel("I have").selectOption({ label: "elevation" });
  await page.getByLabel("I want").selectOption({ label: "torque" });
  await expect.poll(() => says.innerText()).toMatch(/^No page takes the elevation/);
  expect(await found()).toEqual([]);
});

test("without JavaScript nobody is asked what they have", async () => {
  const page = await newVisitor({ javaScriptEnabled: false });
  await page.goto("/numbers/");
  expect(await page.locator("[data-have-and-want]").isVisible()).toBe(false);
  expect(await page.locator("main .leader a").filter({ visible: true }).count()).toBeGreaterThan(20);
});

test("the search finds a quick answer by another word, and says that it is one", async () => {
  const page = await newVisitor();
  await open(page, "/");
  await page.locator(".head [data-find]").click();
  await page.locator("#finder-query").fill("psi of boost");
  const entry = page.locator('#finder li:has(a[href*="/quick/boost-ratio/"])');
  await entry.waitFor();
  expect(await entry.locator(".kind").innerText()).toBe("Quick answer");
});
