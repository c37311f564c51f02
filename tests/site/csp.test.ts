import { setTimeout } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import { policy } from "../../src/integrations/policy.ts";
import { embedPages, fileOf, files, pages, read, unlikePages } from "./dist.ts";
import { address, newVisitor, open, sizes } from "./site.ts";

/** What a browser says about something that moved by itself. Below 0.01 nobody sees it: a late font of the same room. */
interface Shift {
  readonly value: number;
  readonly sources: readonly { readonly node: Node | null }[];
}

describe.each([...unlikePages, ...embedPages.slice(0, 1)])("%s", (path) => {
  test("keeps to its policy and its origin, logs nothing, and does not move while it loads", async () => {
    const page = await newVisitor({ viewport: sizes[0], serviceWorkers: "allow" });
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

test.each([...pages, ...embedPages])(
  "%s states the strict policy, and holds nothing that it would forbid",
  (path) => {
    const html = read(fileOf(path)).toString();
    const [, stated = ""] = /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(html) ?? [];
    expect(stated.replaceAll("&#39;", "'")).toBe(policy);
    expect(html).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\s(?:style|on\w+)="/);
  },
);

test("the policy allows nothing inline, and nobody else's", () => {
  expect(policy).toMatch(/^default-src 'none';/);
  expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
});

test.each([...pages, ...embedPages])("%s is sent with the policy and who may frame it", async (path) => {
  const { headers } = await fetch(address + path, { method: "HEAD" });
  const framedBy = path.startsWith("/embed/") ? "*" : "'none'";
  expect(headers.get("content-security-policy")).toBe(`${policy}; frame-ancestors ${framedBy}`);
  expect(headers.get("x-content-type-options")).toBe("nosniff");
  expect(headers.get("referrer-policy")).toBe("no-referrer");
  expect(headers.get("permissions-policy")).toContain("camera=()");
  expect(headers.get("cross-origin-opener-policy")).toBe("same-origin");
});

test("what is named by its content may be kept for ever, and nothing else", async () => {
  const cacheOf = async (path: string) =>
    (await fetch(address + path, { method: "HEAD" })).headers.get("cache-control") ?? "";
  const script = files.find((file) => file.startsWith("/_astro/")) ?? "";
  expect(await cacheOf(script)).toContain("immutable");
  expect(await cacheOf("/")).toBe("no-cache");
  expect(await cacheOf("/sw.js")).not.toMatch(/immutable/);
});
