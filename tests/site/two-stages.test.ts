import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { enter, expectShown } from "./entered.ts";
import { calculatorOn, choose, field, newVisitor, notANumber, open, resultsOf } from "./site.ts";

/* Expected numbers come from a program written independently of this one. */
const loader = {
  choices: { humidity: "dry", drive: "crankshaft", drive_2: "exhaust" },
  values: {
    p_0: "100 kPa",
    T_0: "25",
    Delta_p_01: "0",
    m_a: "0.62",
    p_m: "420",
    eta_s: "0.60",
    P: "0.8",
    T_w_in: "30",
    Delta_p_23: "6 kPa",
    eta_s_2: "0.76",
    P_45: "0.85",
    T_w_in_45: "30",
    Delta_p_45: "7 kPa",
    eta_b: "0.95",
  },
};

const messageAt = async (page: Page, calculator: string, id: string) =>
  (await calculatorOn(page, calculator).locator(`[id="${calculator}-${id}-msg"]`).textContent()) ?? "";

test("a loader's best split, another split, and limits", async () => {
  const page = await newVisitor();
  await enter(page, "two-stage-split", loader.choices, loader.values);
  expectShown(await resultsOf(page, "two-stage-split"), {
    r_1: 1.3644,
    r_2: 3.27354,
    W_c12: 131.569,
    T_4: 201.78,
    T_m: 55.77,
    rho_m: 4.4485,
    W_single: 125.488,
    W_no_cooler: 137.302,
    Delta_p_even: 13.068,
  });
  const sheet = calculatorOn(page, "two-stage-split");
  expect(await sheet.textContent()).toContain("The better compressor alone would need less");

  await choose(page, "two-stage-split", "split", "given");
  await field(page, "two-stage-split", "r_1").fill("2.0664");
  expectShown(await resultsOf(page, "two-stage-split"), { r_2: 2.12819, W_c12: 135.426, T_4: 154.01 });

  await choose(page, "two-stage-split", "split", "best");
  await choose(page, "two-stage-split", "limits", "set");
  await field(page, "two-stage-split", "T_4_most").fill("190");
  expectShown(await resultsOf(page, "two-stage-split"), { r_1: 1.50506, T_4: 190.0 });
  await sheet.locator("figure.fig").getByText("limit").first().waitFor();
});

test("the path of two stages draws both coolers with their water", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  await choose(page, "charge-path", "stages", "two");
  const figure = calculatorOn(page, "charge-path").locator("figure.fig").first();
  await figure.getByText("second cooler").first().waitFor();
  expect(
    await figure
      .getByText(/^water$/)
      .filter({ visible: true })
      .count(),
  ).toBe(2);
  const shown = await resultsOf(page, "charge-path");
  for (const id of ["T_4", "W_c12", "Q_45", "m_w", "m_w_45"]) expect(shown[id], id).toMatch(/\d/);
});

test("a ferry's condensate", async () => {
  const page = await newVisitor();
  await enter(
    page,
    "condensation",
    { humidity: "relative" },
    {
      p_0: "100.6 kPa",
      T_0: "33",
      varphi_0: "85 %",
      m_a: "1.1",
      T_2: "170",
      T_3: "38",
      p_3: "280",
      T_w_in: "28",
    },
  );
  const shown = await resultsOf(page, "condensation");
  expectShown(shown, { T_dp_ambient: 30.14 });
  expect(Math.abs(Number(shown["V_c"]) * 60 - 48.5)).toBeLessThan(0.2);
});

describe("what cannot be is said with its bound", () => {
  test("a split whose second stage would expand", async () => {
    const page = await newVisitor();
    await enter(page, "two-stage-split", { ...loader.choices, split: "given" }, loader.values);
    await field(page, "two-stage-split", "r_1").fill("5");
    const says = await messageAt(page, "two-stage-split", "r_1");
    expect(says).toContain("would have to expand");
    const bound = /The bound is ([\d.]+)\.$/.exec(says.trim())?.[1] ?? "";
    await field(page, "two-stage-split", "r_1").fill(bound);
    expect((await resultsOf(page, "two-stage-split"))["r_2"]).toMatch(/^1\.000$/);
  });

  test("a duct that chokes", async () => {
    const page = await newVisitor();
    await open(page, "/numbers/duct-loss/");
    await calculatorOn(page, "duct-loss").locator("figure.fig").getByText("chokes").first().waitFor();
    await field(page, "duct-loss", "m_a").fill("3");
    const says = await messageAt(page, "duct-loss", "m_a");
    expect(says).toMatch(/bound is [\d.]+.kg\/s/);
    const bound = /bound is ([\d.]+)/.exec(says)?.[1] ?? "";
    await field(page, "duct-loss", "m_a").fill(bound);
    expect((await resultsOf(page, "duct-loss"))["Delta_p_tot"]).toMatch(/^\d/);
  });

  test.each([
    ["core-loss", "m_a", "8", /bound/],
    ["cooler-gain", "Delta_p_23", "200 kPa", /bound/],
    ["two-stage-split", "p_m", "50", /bound|Accepted/],
    ["measured-loss", "m_a", "40", /bound|Accepted/],
  ] as const)("%s with %s at %s", async (calculator, id, text, pattern) => {
    const page = await newVisitor();
    await open(page, `/numbers/${calculator}/`);
    const typed = field(page, calculator, id);
    if ((await typed.count()) === 0) throw new Error(`${calculator} has no field ${id}`);
    await typed.fill(text);
    const sheet = (await calculatorOn(page, calculator).innerText()) ?? "";
    expect(sheet).not.toMatch(notANumber);
    expect(await calculatorOn(page, calculator).locator("[id$='-msg']").allTextContents()).toEqual(
      expect.arrayContaining([expect.stringMatching(pattern)]),
    );
  });
});
