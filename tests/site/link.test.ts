import fc from "fast-check";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { choose, field, newVisitor, notANumber, open, parse, resultsOf } from "./site.ts";

const id = "charge-path";
const shelf = "charge-air:settings";
const others = {
  system: "us",
  barometer: { typed: "12.2", example: 100_000, unit: "psi", shown: "psi" },
  fromElevation: false,
};

/** A visitor with settings of their own. */
async function somebodyElse(): Promise<Page> {
  const page = await newVisitor();
  await page.addInitScript(
    ([key, value]) => {
      if (localStorage.getItem(key) === null) localStorage.setItem(key, value);
    },
    [shelf, JSON.stringify(others)] as const,
  );
  return page;
}

const settingsOf = (page: Page): Promise<unknown> =>
  page.evaluate((key) => JSON.parse(localStorage.getItem(key) ?? "null"), shelf);

const unitsOf = (page: Page) => page.locator(`[data-calculator="${id}"] output + .u`).allTextContents();

test("a link opens the same state in a browser whose own settings differ, and leaves those alone", async () => {
  const mine = await newVisitor();
  await open(mine, `/numbers/${id}/`);
  await choose(mine, id, "humidity", "relative");
  await choose(mine, id, "cooler", "effectiveness");
  await field(mine, id, "p_0").fill("29.2 inHg");
  await field(mine, id, "T_0").fill("86 °F");
  await field(mine, id, "varphi_0").fill("63 %");
  await field(mine, id, "r").fill("2.4");
  await field(mine, id, "V_d").fill("270 in3");
  await mine.waitForFunction(() => location.hash.includes("270"));
  const link = mine.url();
  const numbers = await resultsOf(mine, id);

  const other = await somebodyElse();
  await open(other, link);
  await expect.poll(() => resultsOf(other, id), { timeout: 20_000 }).toEqual(numbers);
  expect(await unitsOf(other)).toEqual(await unitsOf(mine));
  for (const key of ["T_0", "varphi_0", "r", "V_d", "n"])
    expect([key, await field(other, id, key).inputValue()]).toEqual([
      key,
      await field(mine, id, key).inputValue(),
    ]);

  await field(other, id, "r").fill("2.5");
  expect(await settingsOf(other)).toEqual(others);
  await open(other, `/numbers/${id}/`);
  expect(await settingsOf(other)).toEqual(others);
  expect(await unitsOf(other)).not.toEqual(await unitsOf(mine));
});

test("a reload loses nothing", async () => {
  const page = await newVisitor();
  await open(page, `/numbers/${id}/`);
  await field(page, id, "r").fill("2.9");
  await page.waitForFunction(() => location.hash.includes("2.9"));
  const before = await resultsOf(page, id);
  await page.reload();
  await expect.poll(() => resultsOf(page, id), { timeout: 20_000 }).toEqual(before);
  expect(await field(page, id, "r").inputValue()).toBe("2.9");
});

test("a damaged link opens with example values, and says what it could not read", async () => {
  const fresh = await newVisitor();
  await open(fresh, `/numbers/${id}/`);
  const examples = await resultsOf(fresh, id);
  const page = await newVisitor();
  await open(
    page,
    `/numbers/${id}/#v=1&units=metric&barometer=7;furlong&${id}.r=9;furlong&${id}.cooler=icebox&${id}.x=1;kPa`,
  );
  const note = page
    .locator(`[data-calculator="${id}"] [role=status]`)
    .filter({ hasText: "could not be read" });
  await note.waitFor();
  const says = await note.innerText();
  for (const name of ["barometer", "Pressure ratio", "What is known of the cooler", "charge-path.x"])
    expect(says).toContain(name);
  expect(await resultsOf(page, id)).toEqual(examples);
});

test("whatever stands in the address, the page shows numbers", async () => {
  const page = await newVisitor();
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  await open(page, `/numbers/${id}/`);
  const key = fc.constantFrom(
    "v",
    "units",
    "barometer",
    `${id}.r`,
    `${id}.T_0`,
    `${id}.cooler`,
    `${id}.p_0`,
    "x.y",
  );
  const hash = fc
    .array(
      fc.tuple(
        key,
        fc.oneof(
          fc.string({ unit: "binary", maxLength: 12 }),
          fc.constantFrom("2;1", "~NaN;1", "%", "us", "0;psi-g"),
        ),
      ),
      { maxLength: 5 },
    )
    .map((parts) => parts.map(([name, value]) => `${name}=${value}`).join("&"));
  await fc.assert(
    fc.asyncProperty(hash, async (text) => {
      await page.evaluate((next) => {
        location.hash = next;
      }, text);
      await page.evaluate(() => new Promise(requestAnimationFrame));
      const sheet = await page.locator(`[data-calculator="${id}"]`).innerText();
      // What a link says is quoted, whatever it says.
      expect(sheet.replace(/“[^”]*”|of version [^;]*;/g, "")).not.toMatch(notANumber);
      expect(Object.values(await resultsOf(page, id)).filter((shown) => Number.isNaN(parse(shown)))).toEqual(
        [],
      );
    }),
    { numRuns: 25 },
  );
  expect(errors).toEqual([]);
});
