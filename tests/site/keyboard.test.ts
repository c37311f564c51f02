import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { examplePages, extremesOf, lessonPages } from "./dist.ts";
import { field, newVisitor, open, sizes } from "./site.ts";

/** A page with what wakes in sight awake, back at its head. */
async function openAwake(page: Page, path: string): Promise<void> {
  await open(page, path);
  for (const calculator of await page.locator("[data-calculator]").all())
    await calculator.scrollIntoViewIfNeeded();
  await page.waitForFunction(() =>
    [...document.querySelectorAll("[data-calculator] [data-sheet]")].every((sheet) => "__k" in sheet),
  );
  await page.evaluate(() => scrollTo(0, 0));
}

/** Names all that Tab has to reach, in the order of the page. */
const nameStops = () => {
  const isSeen = (element: HTMLElement) =>
    element.checkVisibility({ visibilityProperty: true }) && element.tabIndex >= 0;
  const selector = "a[href], button, input, select, textarea, summary, [tabindex='0']";
  const all = [...document.querySelectorAll<HTMLElement>(selector)].filter(isSeen);
  // Of a group of radio buttons Tab reaches the one that is chosen; the arrows reach the others.
  const stops = all.filter((e) => !(e instanceof HTMLInputElement && e.type === "radio" && !e.checked));
  stops.forEach((element, i) => {
    element.dataset["stop"] =
      `${i} ${element.tagName} ${element.id || element.textContent?.trim().slice(0, 30)}`;
  });
  return stops.map((element) => element.dataset["stop"] ?? "");
};

/** Where the focus is, or null once it has left the page; and whether one sees that. */
const whereFocusIs = () => {
  const at = document.activeElement;
  if (!(at instanceof HTMLElement) || at === document.body) return { stop: null, isMarked: true };
  const marks = (element: Element | null): boolean => {
    if (!element) return false;
    const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
    return (outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== "none";
  };
  const isMarked = [at, at.parentElement, at.closest("label"), at.closest(".entry")].some(marks);
  return { stop: at.dataset["stop"] ?? `an extra stop: ${at.outerHTML.slice(0, 80)}`, isMarked };
};

const kinds = [
  "/numbers/charge-path/",
  ...extremesOf(lessonPages).slice(0, 1),
  ...extremesOf(examplePages).slice(0, 1),
];

describe.each(kinds)("%s", (path) => {
  test.each(sizes)(
    "Tab reaches everything in order at $width px, shows where it is, and gets out",
    async (viewport) => {
      const page = await newVisitor({ viewport });
      await openAwake(page, path);
      const wanted = await page.evaluate(nameStops);
      expect(wanted.length).toBeGreaterThan(20);
      const reached: string[] = [];
      const unmarked: string[] = [];
      while (reached.length < wanted.length + 20) {
        await page.keyboard.press("Tab");
        const { stop, isMarked } = await page.evaluate(whereFocusIs);
        if (stop === null) break;
        reached.push(stop);
        if (!isMarked) unmarked.push(stop);
      }
      expect(reached).toEqual(wanted);
      expect(unmarked).toEqual([]);
    },
  );

  test("Enter opens all that is folded", async () => {
    const page = await newVisitor();
    await openAwake(page, path);
    const folded = page.locator("main details:not([open]) > summary").filter({ visible: true });
    const count = await folded.count();
    expect(count).toBeGreaterThan(0);
    const summaries = await folded.elementHandles();
    for (const summary of summaries) {
      await summary.focus();
      await page.keyboard.press("Enter");
      const says = await summary.evaluate((element) => [
        element.parentElement?.hasAttribute("open"),
        element.textContent,
      ]);
      expect(says).toEqual([true, says[1]]);
    }
  });
});

test("the arrows make a choice, and its field appears", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  const choice = page.locator('select[id="charge-path-wanted"]');
  await choice.focus();
  await page.keyboard.press("ArrowDown");
  expect(await choice.inputValue()).toBe("pressure");
  expect(await field(page, "charge-path", "p_m").isVisible()).toBe(true);
});

test("the first stop leads past the head of the page", async () => {
  const page = await newVisitor();
  await open(page, "/numbers/charge-path/");
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("href"))).toBe("#main");
});
