import { expect, test } from "vitest";
import { calculatorOn, newVisitor, open } from "./site.ts";

test.each(["charge-path", "cooler-gain", "two-stage-split"])(
  "the answer of %s stays in sight beside its fields, but on paper where it is",
  async (id) => {
    const page = await newVisitor({ viewport: { width: 1440, height: 900 } });
    await open(page, `/numbers/${id}/`);
    const sheet = calculatorOn(page, id);
    const [fields, results] = [sheet.locator(".give"), sheet.locator(".get")];
    const heightOf = (one: typeof fields) =>
      one.evaluate((element) => element.getBoundingClientRect().height);
    const [long, short] = [await heightOf(fields), await heightOf(results)];
    expect(long).toBeGreaterThan(short);
    // As far as the column of fields is longer, the results go along.
    const scrollIntoFields = (by: number) =>
      fields.evaluate(
        (element, down) => scrollTo(0, scrollY + element.getBoundingClientRect().top + down),
        by,
      );
    const answerTop = () =>
      sheet
        .locator("output")
        .first()
        .evaluate((output) => output.getBoundingClientRect().top);
    for (const by of [0.2, 0.6, 0.95]) {
      await scrollIntoFields(by * (long - short));
      expect(await answerTop()).toBeGreaterThanOrEqual(0);
      expect(await answerTop()).toBeLessThan(200);
    }
    // And end with the fields.
    await scrollIntoFields(long - 50);
    expect(await results.evaluate((element) => element.getBoundingClientRect().bottom)).toBeLessThan(51);
    await page.emulateMedia({ media: "print" });
    expect(await results.evaluate((element) => getComputedStyle(element).position)).toBe("static");
  },
);
