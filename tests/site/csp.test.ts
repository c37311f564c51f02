import { describe, expect, test } from "vitest";
import { pages } from "./dist.ts";
import { address, newVisitor, open, sizes } from "./site.ts";

describe.each(pages)("%s", (path) => {
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
    await page.addInitScript(() => {
      const seen = { shift: 0, broken: [] as string[] };
      Object.assign(window, { seen });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) seen.shift += (entry as unknown as { value: number }).value;
      }).observe({ type: "layout-shift", buffered: true });
      addEventListener("securitypolicyviolation", (event) =>
        seen.broken.push(`${event.violatedDirective} ${event.sourceFile ?? ""}`),
      );
    });
    await open(page, path);
    await page.evaluate(async () => {
      for (const details of document.querySelectorAll("details")) details.open = true;
      await document.fonts.ready;
    });
    const shiftOnLoad = await page.evaluate(
      () => (window as unknown as { seen: { shift: number } }).seen.shift,
    );
    // Everything that wakes when it is scrolled to.
    for (const island of await page.locator("astro-island").all())
      await island.evaluate((e) => e.scrollIntoView());
    await page.waitForFunction(() => !document.querySelector("astro-island[ssr]"));
    const { broken } = await page.evaluate(() => (window as unknown as { seen: { broken: string[] } }).seen);
    expect(broken).toEqual([]);
    expect(trouble).toEqual([]);
    expect(shiftOnLoad).toBeLessThan(0.001);
  });

  test("states a strict policy", async () => {
    const page = await newVisitor();
    await page.goto(path);
    const policy =
      (await page.locator('meta[http-equiv="content-security-policy"]').getAttribute("content")) ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
  });
});
