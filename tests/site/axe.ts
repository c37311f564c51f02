import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { newVisitor, open, sizes } from "./site.ts";

/** What may differ between light and dark. */
const colourRules = ["color-contrast", "link-in-text-block"];

/** Violations of the page as it stands, without the parts that `skip` selects. */
export async function violations(
  page: Page,
  skip: string,
  rules?: readonly string[],
): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).exclude(skip);
  // There are no frames, for which the other mode opens a second page each time.
  axe.setLegacyMode(true);
  const found = await (rules ? axe.withRules([...rules]) : axe).analyze();
  return found.violations.map(({ id, nodes }) => {
    const where = nodes.slice(0, 3).map(({ html, target }) => `${html.slice(0, 160)} at ${target}`);
    return `${id}: ${where.join(" | ")}`;
  });
}

/** Violations of a part of the page as it stands. */
export async function violationsOf(page: Page, part: string): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).include(part).exclude(".katex-html").setLegacyMode(true);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
}

/** Opens what is folded. Of a hundred alike, a few are left. */
const openFolded = () => {
  const counted = new Map<string, number>();
  for (const details of document.querySelectorAll("details")) {
    const count = (counted.get(details.className) ?? 0) + 1;
    counted.set(details.className, count);
    details.open = true;
    if (count > 5) details.remove();
  }
};

/** Leaves a few rows of each table and a few steps of each working. */
const shorten = () => {
  for (const repeated of document.querySelectorAll("tbody tr, ol.steps > li, template")) {
    const place = [...(repeated.parentElement?.children ?? [])].indexOf(repeated);
    if (place >= 5 || repeated.matches("template")) repeated.remove();
  }
};

/** Puts an empty box in the place of each drawn formula: it is hidden from who listens, and most of a page's elements. */
const boxFormulas = () => {
  const formulas = [...document.querySelectorAll<HTMLElement>(".katex-html")];
  const sizes = formulas.map((formula) => formula.getBoundingClientRect());
  for (const [i, formula] of formulas.entries()) {
    formula.replaceChildren();
    Object.assign(formula.style, {
      display: "inline-block",
      width: `${sizes[i]?.width}px`,
      height: `${sizes[i]?.height}px`,
    });
  }
};

/** Answers the calculator of the page asked backwards with nothing, and holds that: all that its panel can say. */
async function askBackwards(page: Page): Promise<void> {
  const panel = page.locator(".back");
  if ((await panel.count()) === 0) return;
  // In a text a calculator wakes when it comes into sight.
  await panel.scrollIntoViewIfNeeded();
  await panel.locator("input[type=text]").fill("-1e12");
  await panel.locator("button.quiet").click();
  await panel.locator(":is(.solved, .is-invalid)").waitFor();
}

/**
 * Fails with every violation that the page has in full on a phone in light, and of its colours there in dark; if asked, at
 * every width in both.
 */
export async function expectNoViolation(path: string, everyWidth = true): Promise<void> {
  const page = await newVisitor();
  await open(page, path);
  const found: string[] = [];
  const note = (where: string, here: readonly string[]) =>
    found.push(...here.map((violation) => `${where}: ${violation}`));
  await page.setViewportSize(sizes[0]);
  await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" });
  await page.evaluate(openFolded);
  await askBackwards(page);
  await page.evaluate(boxFormulas);
  // A hundred checks are one kind of paragraph over one kind of table.
  if (path === "/checks/") await page.evaluate(shorten);
  note("in full", await violations(page, ".katex-html"));
  // What a row or a formula says does not depend on width and colour.
  await page.evaluate(shorten);
  for (const size of everyWidth ? sizes : sizes.slice(0, 1)) {
    await page.setViewportSize(size);
    for (const colorScheme of ["light", "dark"] as const) {
      if (size === sizes[0] && colorScheme === "light") continue;
      await page.emulateMedia({ colorScheme });
      const rules = colorScheme === "dark" ? colourRules : undefined;
      note(`${size.width} ${colorScheme}`, await violations(page, ".katex", rules));
    }
  }
  expect(found.join("\n")).toBe("");
}

/** Milliseconds that one page may take on a busy machine. */
export const patience = 180_000;
