import type { Browser, Page } from "playwright-core";
import { figure, heading } from "./report.ts";

const keystrokes = 60;

/** Makes a page note, for every key that is typed into a field, how long its frame takes to be painted, in ms. */
const watchKeys = () => {
  const painted: number[] = [];
  Object.assign(window, { painted });
  addEventListener(
    "input",
    ({ timeStamp }) => {
      // A message sent from the frame's own callback waits for its turn until the frame has been painted.
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => painted.push(performance.now() - timeStamp);
      requestAnimationFrame(() => port2.postMessage(""));
    },
    true,
  );
};

/** A field to type digits into behind these, and a result that follows. */
const typed = [
  { calculator: "charge-path", field: "r", start: "2.", follows: "T_2" },
  { calculator: "two-stage-split", field: "p_m", start: "42", follows: "W_c12" },
] as const;

async function type(
  page: Page,
  address: string,
  { calculator, field: id, start, follows }: (typeof typed)[number],
  slowdown: number,
): Promise<readonly number[]> {
  const client = await page.context().newCDPSession(page);
  await page.goto(`${address}/numbers/${calculator}/`);
  await page.waitForLoadState("networkidle");
  await client.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  await page.evaluate(watchKeys);
  const paintedSoFar = () => page.evaluate(() => (window as unknown as { painted: number[] }).painted);
  const field = page.locator(`input[id="${calculator}-${id}"]`);
  await field.fill(start);
  let shown = "";
  for (let i = 0; i < keystrokes; i++) {
    await field.press(i % 2 === 0 ? String(((i / 2) % 9) + 1) : "Backspace");
    while ((await paintedSoFar()).length < i + 2) await page.waitForTimeout(20);
    const now = (await page.locator(`[data-result="${follows}"]`).textContent()) ?? "";
    if (now === shown) throw new Error(`The result did not follow key ${i}.`);
    shown = now;
  }
  // The first is that of setting the field up.
  return (await paintedSoFar()).slice(1);
}

/** Prints how long a key takes on two pages, at full speed and slowed down. */
export async function benchKeystrokes(browser: Browser, address: string): Promise<void> {
  heading("from a key to the painted result");
  for (const what of typed) {
    for (const slowdown of [1, 6]) {
      const page = await browser.newPage();
      const painted = (await type(page, address, what, slowdown)).toSorted((a, b) => a - b);
      await page.close();
      const at = (part: number) => painted[Math.floor(part * (painted.length - 1))] ?? Number.NaN;
      figure(
        `${what.calculator}, ${slowdown} × slowed down`,
        at(0.5),
        "ms",
        `95 of 100 within ${at(0.95).toFixed(0)} ms`,
      );
    }
  }
}
