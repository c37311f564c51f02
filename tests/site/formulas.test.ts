import { describe, expect, test } from "vitest";
import { pages } from "./dist.ts";
import { newVisitor, open } from "./site.ts";

describe.each(pages)("%s", (path) => {
  test("no formula is wider than its column at 390 px, those of steps not in use included", async () => {
    const page = await newVisitor({ viewport: { width: 390, height: 844 } });
    await open(page, path);
    const wide = await page.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
      for (const template of document.querySelectorAll("template")) {
        const list = template.parentElement?.querySelector("ol.steps");
        const steps = template.content.cloneNode(true);
        if (!list) continue;
        for (const slot of (steps as DocumentFragment).querySelectorAll("[data-slot]"))
          slot.textContent = "287.04";
        list.append(steps);
      }
      const isBlock = (element: Element) => !getComputedStyle(element).display.startsWith("inline");
      return [...document.querySelectorAll("main .katex")].flatMap((formula) => {
        let column = formula.parentElement;
        while (column && !isBlock(column)) column = column.parentElement;
        if (!column || !formula.checkVisibility()) return [];
        const { right, left, width } = formula.getBoundingClientRect();
        const room = column.getBoundingClientRect();
        const scrolls =
          getComputedStyle(column).overflowX !== "visible" && column.scrollWidth > column.clientWidth;
        if (right <= room.right + 1 && left >= room.left - 1 && !scrolls) return [];
        const what =
          column.closest("[data-relation]")?.getAttribute("data-relation") ??
          formula.textContent?.slice(0, 60);
        return [`${what}: ${Math.round(width)} px in ${Math.round(room.width)} px`];
      });
    });
    expect([...new Set(wide)].join("\n")).toBe("");
  });

  test.each([320, 390])("the page does not scroll sideways at %i px", async (width) => {
    const page = await newVisitor({ viewport: { width, height: 800 } });
    await open(page, path);
    const { scroll, client, widest } = await page.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
      const root = document.documentElement;
      const over = [...document.querySelectorAll("body *")].filter(
        (e) => e.checkVisibility() && e.getBoundingClientRect().right > root.clientWidth + 1,
      );
      return {
        scroll: root.scrollWidth,
        client: root.clientWidth,
        widest: over.slice(0, 3).map((element) => element.outerHTML.slice(0, 120)),
      };
    });
    expect(scroll, widest.join("\n")).toBeLessThanOrEqual(client);
  });
});
