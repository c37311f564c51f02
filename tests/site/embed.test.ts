import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { growingScript } from "../../src/widgets/frame-snippet.ts";
import { embedPages, examplePages, extremesOf, fileOf, numberPages, read } from "./dist.ts";
import { address, newVisitor, notANumber, open, parse } from "./site.ts";

const calculators = embedPages.filter((path) => !path.startsWith("/embed/example/"));
const questions = embedPages.filter((path) => path.startsWith("/embed/example/"));

// Somebody else's site: its pages frame what their address names, with a sandbox or without.
const other = createServer((request, response) => {
  const { searchParams } = new URL(request.url ?? "/", "http://localhost");
  const sandbox = searchParams.has("sandbox") ? ' sandbox="allow-scripts"' : "";
  const [width, height] = [searchParams.get("width") ?? "900", searchParams.get("height") ?? "1200"];
  const state = searchParams.has("state") ? `#${searchParams.get("state")}` : "";
  const lines = searchParams.has("grows") ? growingScript(`${address}/`) : "";
  response.setHeader("content-type", "text/html");
  response.end(
    `<!doctype html><title>Other</title><iframe width="${width}" height="${height}"${sandbox} src="${address}${searchParams.get("frames")}${state}"></iframe>${lines}`,
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

test("every calculator and every example has a page to be framed", () => {
  expect(calculators.map((path) => path.replace("/embed/", "/numbers/"))).toEqual(numberPages);
  expect(questions.map((path) => path.replace("/embed/example/", "/examples/"))).toEqual(examplePages);
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

const extremes = extremesOf(calculators);

describe.each(calculators)("%s", (path) => {
  test.each(extremes.includes(path) ? [400, 600] : [400])(
    "in a frame of %d px elsewhere shows its results, and scrolls inside",
    async (height) => {
      const page = await newVisitor({ viewport: { width: 420, height: 800 } });
      const complaints = complaintsOf(page);
      await page.goto(`${elsewhere}/?frames=${path}&sandbox&width=390&height=${height}`);
      const frame = page.frameLocator("iframe");
      const isAwake = () => frame.locator("[data-sheet]").evaluate((sheet) => "__k" in sheet);
      await expect.poll(isAwake).toBe(true);
      const id = path.split("/")[2] ?? "";
      const results = await frame.locator("[data-result]").allInnerTexts();
      expect(results.length).toBeGreaterThan(0);
      for (const text of results) if (text !== "—") expect(parse(text), text).not.toBeNaN();
      expect(await frame.locator("main").innerText()).not.toMatch(notANumber);
      const link = frame.locator(`main a[href="/numbers/${id}/"]`).last();
      expect(await link.getAttribute("target")).toBe("_blank");
      const inside = page.frames()[1];
      const size = await inside?.evaluate(() => {
        const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
        scrollTo(0, scrollHeight);
        return { wider: scrollWidth - clientWidth, higher: scrollHeight - clientHeight, scrolled: scrollY };
      });
      expect(size?.wider).toBeLessThanOrEqual(0);
      expect(Math.abs((size?.scrolled ?? 0) - (size?.higher ?? 0))).toBeLessThan(2);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );
});

test("a link's values stand in the frame", async () => {
  const page = await newVisitor();
  const state = encodeURIComponent("v=2&units=us&compressor-outlet.r=2.75;1");
  await page.goto(`${elsewhere}/?frames=/embed/compressor-outlet/&sandbox&state=${state}`);
  const frame = page.frameLocator("iframe");
  await frame.locator(".tools").waitFor();
  await frame.locator("#compressor-outlet-r").waitFor();
  await expect.poll(() => frame.locator("#compressor-outlet-r").inputValue()).toBe("2.75");
  await expect.poll(() => frame.locator(".get").innerText()).toContain("°F");
});

test("in a sandbox draws are made without a worker, and the page says so", async () => {
  const page = await newVisitor({ viewport: { width: 420, height: 700 } });
  const errors: string[] = [];
  page.on("pageerror", ({ message }) => errors.push(message));
  await page.goto(`${elsewhere}/?frames=/embed/charge-path/&sandbox&width=390&height=600`);
  const frame = page.frameLocator("iframe");
  const isAwake = () => frame.locator("[data-sheet]").evaluate((sheet) => "__k" in sheet);
  await expect.poll(isAwake).toBe(true);
  await frame.locator("#charge-path-eta_s").fill("0.74 ± 0.02");
  await frame.getByRole("button", { name: /^Draw 20/ }).click();
  await frame.locator(".draws", { hasText: "so they were made in the page" }).waitFor();
  expect(await frame.locator(".draws table").innerText()).toMatch(/First order/);
  expect(errors).toEqual([]);
});

test("the frame becomes as high as what stands in it, each time that changes", async () => {
  const page = await newVisitor({ viewport: { width: 420, height: 800 } });
  await page.goto(`${elsewhere}/?frames=/embed/charge-path/&sandbox&width=390&height=400&grows`);
  const inner = () =>
    page.frames()[1]?.evaluate(() => {
      const { scrollHeight, clientHeight } = document.documentElement;
      return scrollHeight - clientHeight;
    });
  await page.frameLocator("iframe").locator(".tools").waitFor();
  await expect.poll(inner).toBe(0);
  const height = () => page.locator("iframe").evaluate((frame) => frame.getBoundingClientRect().height);
  const before = await height();
  await page.frameLocator("iframe").locator("[id='charge-path-stages']").selectOption("two");
  await expect.poll(height).toBeGreaterThan(before + 100);
  await expect.poll(inner).toBe(0);
});

describe.each(questions)("%s", (path) => {
  test("asks, and does not answer", async () => {
    const whole = path.replace("/embed/example/", "/examples/");
    const page = await newVisitor();
    await open(page, whole);
    const answers = await page.locator(".found .res output").allInnerTexts();
    const number = await page.locator(".found .answer output").evaluateAll(([one]) => one?.textContent ?? "");
    expect([...answers, number].join("")).toMatch(/\d/);
    const html = read(fileOf(path)).toString();
    expect(html).not.toContain(`<output>${number}</output>`);
    expect(html).not.toMatch(/class="(?:work|step|found|folded question wrong|tools)/);
    // Neither the answer in words, nor a way to it.
    await page.goto(`${elsewhere}/?frames=${path}&sandbox&width=390&height=600`);
    const frame = page.frameLocator("iframe");
    const text = await frame.locator("main").innerText();
    expect(text).toMatch(/Asked/);
    expect(text).not.toContain(` ${number} `);
    expect(await frame.locator("main a[href*='/numbers/'], main a[href*='/examples/']").count()).toBe(0);
    expect(
      await frame.locator("html").evaluate((root) => root.scrollWidth - root.clientWidth),
    ).toBeLessThanOrEqual(0);
    await page.context().close();
  });
});

/** A visitor whose page may copy; what it copied is read from the page, since all pages of a browser share one clipboard. */
async function copyingVisitor(): Promise<Page> {
  const page = await newVisitor();
  await page.addInitScript(() => {
    navigator.clipboard.writeText = async (text) => {
      document.documentElement.dataset["copied"] = text;
    };
  });
  return page;
}

const copiedOn = (page: Page) => page.evaluate(() => document.documentElement.dataset["copied"] ?? "");

test("instructors take the lines for a frame, and they work", async () => {
  const page = await copyingVisitor();
  await open(page, "/instructors/");
  await page.locator("#framed").selectOption("/embed/example/grain-elevator/");
  await page.locator("#frame-height").selectOption("400");
  await page.getByRole("button", { name: "Copy these lines" }).press("Enter");
  await page.locator("[data-copy-frame] ~ [role=status]", { hasText: "Copied." }).waitFor();
  const lines = await copiedOn(page);
  expect(lines).toContain(`src="${address}/embed/example/grain-elevator/"`);
  expect(lines).toContain('height="400"');
  await page.goto(elsewhere);
  await page.setContent(lines);
  await page.frameLocator("iframe").locator("h1").waitFor();
});

test("a calculator's own page gives the lines with what was typed", async () => {
  const page = await copyingVisitor();
  await open(page, "/numbers/compressor-outlet/");
  await page.locator("#compressor-outlet-r").fill("2.75");
  await page.locator(".exports > summary").click();
  await page.getByRole("button", { name: "Frame for a course page" }).click();
  await page.locator(".tools [role=status]", { hasText: "Frame copied." }).waitFor();
  const lines = await copiedOn(page);
  expect(lines).toContain(`src="${address}/embed/compressor-outlet/#v=2`);
  expect(lines).toContain("compressor-outlet.r=2.75");
});

test("without scripts there is a sentence, and the link", async () => {
  const page = await newVisitor({ javaScriptEnabled: false });
  await page.goto(calculators[0] ?? "");
  expect(await page.locator("main").innerText()).toContain("needs JavaScript");
  expect(await page.locator("main a").getAttribute("href")).toBe(numberPages[0]);
});
