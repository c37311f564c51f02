import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { embedPages, numberPages } from "./dist.ts";
import { address, newVisitor, parse, resultsOf } from "./site.ts";

// Somebody else's site: its pages frame what their address names, with a sandbox or without.
const other = createServer((request, response) => {
  const { searchParams } = new URL(request.url ?? "/", "http://localhost");
  const sandbox = searchParams.has("sandbox") ? ' sandbox="allow-scripts"' : "";
  response.setHeader("content-type", "text/html");
  response.end(
    `<!doctype html><title>Other</title><iframe width="900" height="1200"${sandbox} src="${address}${searchParams.get("frames")}"></iframe>`,
  );
});
let elsewhere = "";
beforeAll(async () => {
  await new Promise<void>((go) => other.listen(0, "127.0.0.1", go));
  elsewhere = `http://127.0.0.1:${(other.address() as AddressInfo).port}`;
});
afterAll(() => {
  other.close();
});

/** Complaints about the policy, and errors, of a page with all that it frames. */
function complaintsOf(page: Page): readonly string[] {
  const found: string[] = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) found.push(message.text());
  });
  page.on("pageerror", (error) => found.push(error.message));
  return found;
}

test("every calculator has a page to be framed", () => {
  expect(embedPages.map((path) => path.replace("/embed/", "/numbers/"))).toEqual(numberPages);
});

describe.each([
  ["in a frame", ""],
  ["in a frame with a sandbox", "&sandbox"],
])("%s", (_, sandbox) => {
  test("a calculator computes on another site, without a violation", async () => {
    const page = await newVisitor();
    const complaints = complaintsOf(page);
    await page.goto(`${elsewhere}/?frames=/embed/compressor-outlet/${sandbox}`);
    const frame = page.frameLocator("iframe");
    const result = frame.locator("[data-result]").first();
    await frame.locator(".tools").waitFor();
    const before = await result.innerText();
    expect(parse(before)).not.toBeNaN();
    await frame.locator(".give input[type=text]").nth(1).fill("60");
    await result.filter({ hasNotText: before }).waitFor();
    expect(parse(await result.innerText())).not.toBeNaN();
    // What was typed is kept in the address a moment later, where there is one.
    await page.waitForTimeout(400);
    expect(await frame.locator(".work").count()).toBe(0);
    expect(await frame.locator("h1").innerText()).toBe("Compressor outlet");
    expect(complaints).toEqual([]);
  });
});

test.each(["/numbers/compressor-outlet/", "/", "/lessons/compression/", "/nowhere/", "/offline/"])(
  "%s refuses to be framed",
  async (path) => {
    const page = await newVisitor();
    const complaints = complaintsOf(page);
    await page.goto(`${elsewhere}/?frames=${path}`);
    await page.waitForTimeout(300);
    const [, framed] = page.frames();
    expect(await framed?.locator("main").count()).toBe(0);
    expect(complaints.join("\n")).toMatch(/frame-ancestors|X-Frame-Options/);
  },
);

test("each alone shows its results, and its link to the whole", async () => {
  for (const path of embedPages) {
    const page = await newVisitor();
    const complaints = complaintsOf(page);
    await page.goto(path);
    await page.locator(".tools").waitFor();
    const id = path.split("/")[2] ?? "";
    for (const [key, text] of Object.entries(await resultsOf(page, id)))
      expect(parse(text), `${path} ${key}`).not.toBeNaN();
    const link = page.locator(`main a[href="/numbers/${id}/"]`).last();
    expect(await link.getAttribute("target")).toBe("_blank");
    expect(complaints, path).toEqual([]);
    await page.context().close();
  }
}, 120_000);

test("without scripts there is a sentence, and the link", async () => {
  const page = await newVisitor({ javaScriptEnabled: false });
  await page.goto(embedPages[0] ?? "");
  expect(await page.locator("main").innerText()).toContain("needs JavaScript");
  expect(await page.locator("main a").getAttribute("href")).toBe(numberPages[0]);
});
