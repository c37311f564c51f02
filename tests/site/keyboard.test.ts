import { expect, test } from "vitest";
import { field, newVisitor, open, sizes } from "./site.ts";

test.each(sizes)(
  "Tab reaches everything on the charge path at $width px, and shows where it is",
  async (viewport) => {
    const page = await newVisitor({ viewport });
    await open(page, "/numbers/charge-path/");
    const wanted = await page.evaluate(() => {
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
    });
    expect(wanted.length).toBeGreaterThan(20);

    const reached = new Set<string>();
    const unmarked: string[] = [];
    for (let i = 0; i < wanted.length + 20; i++) {
      await page.keyboard.press("Tab");
      const { stop, isMarked } = await page.evaluate(() => {
        const at = document.activeElement;
        if (!(at instanceof HTMLElement) || at === document.body) return { stop: null, isMarked: true };
        const marks = (element: Element | null): boolean => {
          if (!element) return false;
          const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
          return (outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== "none";
        };
        const isMarked = [at, at.parentElement, at.closest("label"), at.closest(".entry")].some(marks);
        return { stop: at.dataset["stop"] ?? `an extra stop: ${at.outerHTML.slice(0, 80)}`, isMarked };
      });
      if (stop === null) break;
      reached.add(stop);
      if (!isMarked) unmarked.push(stop);
    }
    expect(wanted.filter((stop) => !reached.has(stop))).toEqual([]);
    expect([...reached].filter((stop) => !wanted.includes(stop))).toEqual([]);
    expect(unmarked).toEqual([]);
  },
);

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
