import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { enter as enterInto, expectShown, type Texts } from "./entered.ts";
import { choose, field, newVisitor, open, parse, resultsOf } from "./site.ts";

const id = "charge-path";
const enter = (page: Page, choices: Texts, values: Texts) => enterInto(page, id, choices, values);

const irrigationPump: Texts = {
  p_0: "99 kPa",
  T_0: "25",
  Delta_p_01: "0",
  eta_s: "74 %",
  V_d: "4.4 L",
  n: "2000 rev/min",
  eta_v: "0.92",
  b: "210 g/kWh",
  lambda: "1.6",
  AFR_st: "14.5",
};

// Expected numbers come from a program written independently of this one (open reference read), as do those below.
test("an irrigation pump engine: pressure ratio given, cooler outlet temperature known", async () => {
  const page = await newVisitor();
  await enter(
    page,
    {
      humidity: "dry",
      wanted: "ratio",
      efficiency: "isentropic",
      heatCapacity: "real",
      cooler: "temperature",
    },
    { ...irrigationPump, r: "2.2", T_3: "50 °C", T_w_in: "25", Delta_T_w: "8 K", Delta_p_23: "6.0 kPa" },
  );
  expect(await page.getByText("All values are yours").count()).toBe(1);
  expectShown(await resultsOf(page, id), {
    T_2: 126.36,
    rho_m: 2.2834,
    D_rho: 1.9739,
    D_rho_uncooled: 1.6418,
    m_a: 0.15405,
    m_a_uncooled: 0.12814,
    W_c: 15.75,
    Q: 11.88,
  });
});

const hillClimb: Texts = {
  p_0: "98 kPa",
  T_0: "25",
  Delta_p_01: "0",
  W_e: "235 kW",
  eta_s: "0.72",
  V_d: "2.0 L",
  n: "6500",
  eta_v: "0.98",
  b: "300 g/kWh",
  lambda: "0.85",
  AFR_st: "14.6",
};

test("a hill-climb four: power wanted, cooler of known effectiveness", async () => {
  const page = await newVisitor();
  await enter(
    page,
    {
      humidity: "dry",
      wanted: "power",
      efficiency: "isentropic",
      heatCapacity: "real",
      cooler: "effectiveness",
    },
    { ...hillClimb, P: "0.78", T_w_in: "25", Delta_p_23: "9 kPa" },
  );
  expectShown(await resultsOf(page, id), {
    m_a: 0.24303,
    rho_m: 2.2891,
    r_found: 2.24936,
    p_2: 220.44,
    p_g: 113.44,
    T_2: 132.423,
    T_m: 48.633,
    Q: 20.571,
    W_c: 26.346,
    D_rho: 1.99906,
    D_rho_uncooled: 1.65358,
    W_e: 235,
  });
});

test("the same four without a cooler needs far more boost", async () => {
  const page = await newVisitor();
  await enter(
    page,
    { humidity: "dry", wanted: "power", efficiency: "isentropic", heatCapacity: "real", cooler: "none" },
    hillClimb,
  );
  expectShown(await resultsOf(page, id), { r_found: 3.0236, T_2: 177.81, W_c: 37.58, m_a: 0.24303 });
});

test("the four forward: the pressure ratio found gives the power wanted", async () => {
  const page = await newVisitor();
  const { W_e: _, ...rest } = hillClimb;
  await enter(
    page,
    {
      humidity: "dry",
      wanted: "ratio",
      efficiency: "isentropic",
      heatCapacity: "real",
      cooler: "effectiveness",
    },
    { ...rest, r: "2.24936", P: "0.78", T_w_in: "25", Delta_p_23: "9 kPa" },
  );
  expectShown(await resultsOf(page, id), { T_m: 48.633, rho_m: 2.2891, m_a: 0.24303, W_e: 235 });
});

test("working follows what is typed, and opens in step with the results", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  const work = page.locator(`[data-calculator="${id}"] details.work`);
  await work.locator("summary").click();
  const slots = () =>
    work.locator('[data-relation="compression/outlet-pressure"] [data-slot]').allTextContents();
  const before = await slots();
  await field(page, id, "r").fill("3");
  const after = await slots();
  expect(before).not.toEqual(after);
  expect(after.some((text) => parse(text) === 3)).toBe(true);
  const listed = await work.locator("ol.steps > li").count();
  expect(await work.locator("[data-step-count]").textContent()).toBe(`${listed} steps`);
  await choose(page, id, "heatCapacity", "constant");
  // A relation that the example does not use is fetched first.
  await work.locator('[data-relation="compression/constant-outlet-temperature"]').first().waitFor();
});
