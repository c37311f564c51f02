import { setTimeout } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import { fileOf, pages, read, unlikePages } from "./dist.ts";
import { address, newVisitor, open, sizes } from "./site.ts";

/** What a browser says about something that moved by itself. Below 0.01 nobody sees it: a late font of the same room. */
interface Shift {
  readonly value: number;
  readonly sources: readonly { readonly node: Node | null }[];
}

describe.each(unlikePages)("%s", (path) => {
  test("keeps to its policy and its origin, logs nothing, and does not move while it loads", async () => {
    const page = await newVisitor({ viewport: sizes[0] });
    const trouble: string[] = [];
    page.on("console", (message) => {
      if (["error", "warning"].includes(message.type())) trouble.push(`console: ${message.text()}`);
    });
    page.on("pageerror", (error) => trouble.push(`error: ${error.message}`));
    page.on("request", (request) => {
      if (!request.url().startsWith(`${address}/`) && !request.url().startsWith("data:"))
        trouble.push(`request: ${request.url()}`);
    });
    page.on("response", (response) => {
      if (response.status() >= 400 && new URL(response.url()).pathname !== "/404.html")
        trouble.push(`${response.status()}: ${response.url()}`);
    });
    // Fonts that are late show what the page does when they arrive.
    await page.route("**/*.woff2", async (route) => {
      await setTimeout(300);
      await route.continue();
    });
    await page.addInitScript(() => {
      const seen = { shift: [] as string[], broken: [] as string[] };
      Object.assign(window, { seen });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as unknown as Shift[])
          if (entry.value >= 0.01)
            seen.shift.push(
              `${entry.value.toFixed(4)} ${entry.sources.map(({ node }) => node?.parentElement?.outerHTML.slice(0, 80)).join(" | ")}`,
            );
      }).observe({ type: "layout-shift", buffered: true });
      addEventListener("securitypolicyviolation", (event) =>
        seen.broken.push(`${event.violatedDirective} ${event.sourceFile ?? ""}`),
      );
    });
    await open(page, path);
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    const shiftOnLoad = await page.evaluate(
      () => (window as unknown as { seen: { shift: string[] } }).seen.shift,
    );
    // A calculator in a text wakes when it is scrolled to.
    for (const section of await page.locator("[data-calculator]").all())
      await section.scrollIntoViewIfNeeded();
    await page.waitForFunction(() =>
      [...document.querySelectorAll("[data-sheet]")].every((sheet) => "__k" in sheet),
    );
    const { broken } = await page.evaluate(() => (window as unknown as { seen: { broken: string[] } }).seen);
    expect(broken).toEqual([]);
    expect(trouble).toEqual([]);
    expect(shiftOnLoad.join("\n")).toBe("");
  });
});

test.each(pages)("%s states a strict policy", (path) => {
  const tag = /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(
    read(fileOf(path)).toString(),
  );
  const policy = (tag?.[1] ?? "").replaceAll("&#39;", "'");
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
});
