import { AxeBuilder } from "@axe-core/playwright";
import { describe, expect, test } from "vitest";
import { pages } from "./dist.ts";
import { newVisitor, open, sizes } from "./site.ts";

describe.each(pages)("%s", (path) => {
  test("has no violation at any width, in light and dark", async () => {
    const page = await newVisitor();
    await open(page, path);
    await page.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
    });
    const violations: string[] = [];
    for (const size of sizes) {
      for (const colorScheme of ["light", "dark"] as const) {
        await page.setViewportSize(size);
        await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
        const found = await new AxeBuilder({ page }).analyze();
        for (const { id, nodes } of found.violations)
          violations.push(
            `${size.width} ${colorScheme}: ${id} ${nodes
              .slice(0, 3)
              .map(({ html }) => html.slice(0, 160))
              .join(" | ")}`,
          );
      }
    }
    expect(violations).toEqual([]);
  });
});
