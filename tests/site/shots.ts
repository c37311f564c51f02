// Pictures of every page, to be looked at: node tests/site/shots.ts [part of a page's address]
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { dist, pages } from "./dist.ts";
import { launchBrowser } from "./launch-browser.ts";
import { serve } from "./serve.ts";

const folder = join(import.meta.dirname, "shots");
const wanted = pages.filter((page) => page.includes(process.argv[2] ?? ""));
const views = [
  ...[390, 820, 1440].flatMap((width) => [
    { name: `${width}-light`, width, media: { colorScheme: "light" } as const },
    { name: `${width}-dark`, width, media: { colorScheme: "dark" } as const },
  ]),
  { name: "print", width: 660, media: { media: "print", colorScheme: "light" } as const },
];

mkdirSync(folder, { recursive: true });
const [site, server] = await Promise.all([serve(dist), launchBrowser()]);
const browser = await chromium.connect(server.wsEndpoint());
for (const path of wanted) {
  const page = await browser.newPage();
  await page.goto(site.address + path);
  await page.evaluate(() => {
    for (const details of document.querySelectorAll<HTMLDetailsElement>("details.work")) details.open = true;
  });
  for (const { name, width, media } of views) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ media: "screen", reducedMotion: "reduce", ...media });
    const file = `${path.replaceAll("/", " ").trim().replaceAll(" ", "_") || "home"}-${name}.png`;
    await page.screenshot({ path: join(folder, file), fullPage: true });
  }
  await page.close();
  console.log(path);
}
await browser.close();
await server.close();
site.stop();
