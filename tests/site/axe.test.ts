import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { pages } from "./dist.ts";
import { newVisitor, open, sizes } from "./site.ts";

/** What may differ between light and dark. */
const colourRules = ["color-contrast", "link-in-text-block"];

/** Violations of the page as it stands, without the parts that `skip` selects. */
async function violations(page: Page, skip: string, rules?: readonly string[]): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).exclude(skip);
  // There are no frames, for which the other mode opens a second page each time.
  axe.setLegacyMode(true);
  const found = await (rules ? axe.withRules([...rules]) : axe).analyze();
  return found.violations.map(({ id, nodes }) => {
    const where = nodes.slice(0, 3).map(({ html }) => html.slice(0, 160));
    return `${id}: ${where.join(" | ")}`;
  });
}

describe.each(pages)("%s", (path) => {
  test("has no violation at any width, in light and dark", async () => {
    const page = await newVisitor();
    await open(page, path);
    // Of what is folded, a few of each kind.
    await page.evaluate(() => {
      const opened = new Map<string, number>();
      for (const details of document.querySelectorAll("details")) {
        const count = opened.get(details.className) ?? 0;
        opened.set(details.className, count + 1);
        if (count < 4) details.open = true;
      }
    });
    const found: string[] = [];
    const note = (where: string, here: readonly string[]) =>
      found.push(...here.map((violation) => `${where}: ${violation}`));
    // Formulas are most of what there is to look at, and the same at every width: once is enough for what they say.
    await page.setViewportSize(sizes[0]);
    note("formulas", await violations(page, ".katex-html"));
    for (const size of sizes) {
      await page.setViewportSize(size);
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
        const rules = colorScheme === "dark" ? colourRules : undefined;
        note(`${size.width} ${colorScheme}`, await violations(page, ".katex", rules));
      }
    }
    expect(found.join("\n")).toBe("");
  }, 180_000);
});
