import { expect, test } from "vitest";
import { read } from "./dist.ts";
import { newKeeper } from "./kept.ts";
import { open } from "./site.ts";

interface Icon {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly purpose: string;
}

const manifest = JSON.parse(read("/manifest.webmanifest").toString());
const icons: readonly Icon[] = manifest.icons;

test("the browser finds nothing that keeps the site from being installed", async () => {
  const page = await newKeeper();
  await open(page, "/");
  const session = await page.context().newCDPSession(page);
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  // A visitor of a test leaves no traces, as in a private window, where nothing can be installed.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito")).toEqual(
    [],
  );
  const { errors } = await session.send("Page.getAppManifest");
  expect(errors).toEqual([]);
});

test("the manifest names the site, its start, its colours and its icons", () => {
  expect(manifest).toMatchObject({
    name: "Charge-Air Reference",
    display: "standalone",
    start_url: "./",
    scope: "./",
  });
  expect(manifest.short_name.length).toBeLessThanOrEqual(12);
  for (const colour of [manifest.background_color, manifest.theme_color])
    expect(colour).toMatch(/^#[0-9a-f]{6}$/);
  const offered = icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`);
  expect(offered).toEqual(expect.arrayContaining(["192x192 any", "512x512 any", "512x512 maskable"]));
});

test("each icon is as large as it says", () => {
  const drawn = icons.filter(({ type }) => type === "image/png");
  expect(drawn.length).toBeGreaterThan(2);
  for (const { src, sizes } of drawn) {
    const file = read(src.replace("./", "/"));
    // Width and height of a PNG stand at the bytes 16 and 20.
    expect(`${file.readUInt32BE(16)}x${file.readUInt32BE(20)}`).toBe(sizes);
  }
});
