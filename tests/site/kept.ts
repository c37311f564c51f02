import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { onTestFinished } from "vitest";
import { dist } from "./dist.ts";
import { serve } from "./serve.ts";
import { newVisitor } from "./site.ts";

/** A visitor whose browser keeps pages. */
export const newKeeper = (baseURL?: string): Promise<Page> =>
  newVisitor({ serviceWorkers: "allow", ...(baseURL && { baseURL }) });

/** The paths that are kept in this page's browser, by the edition that they are of. */
export const shelves = (page: Page): Promise<Record<string, readonly string[]>> =>
  page.evaluate(async () => {
    const found: Record<string, string[]> = {};
    for (const name of (await caches.keys()).filter((one) => one.startsWith("charge-air ")))
      found[name] = (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname);
    return found;
  });

/** Waits until something is so. Steps that a browser takes by itself have no event that a test could wait for. */
export async function until(isSo: () => Promise<boolean>, what: string, seconds = 40): Promise<void> {
  const end = Date.now() + seconds * 1000;
  while (!(await isSo())) {
    if (Date.now() > end) throw new Error(`In ${seconds} s it did not come about that ${what}`);
    await new Promise((go) => setTimeout(go, 100));
  }
}

export const untilKept = (page: Page, path: string): Promise<void> =>
  until(
    async () => Object.values(await shelves(page)).some((paths) => paths.includes(path)),
    `${path} is kept`,
  );

/** A copy of the built site that a test may alter, served. It goes away after the test. */
export async function servedCopy(): Promise<{ folder: string; address: string }> {
  const folder = mkdtempSync(join(tmpdir(), "edition-"));
  cpSync(dist, folder, { recursive: true });
  const { address, stop } = await serve(folder);
  onTestFinished(() => {
    stop();
    rmSync(folder, { recursive: true, force: true });
  });
  return { folder, address };
}
