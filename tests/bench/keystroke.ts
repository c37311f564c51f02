import type { Browser, Page } from "playwright-core";

const keystrokes = 60;

/** Of one key, in ms: until the frame with its result is painted, and the part of that spent working, not waiting. */
interface Key {
  readonly painted: number;
  readonly work: number;
}

/** Makes a page note every key that is typed into a field. */
const watchKeys = () => {
  const keys: Key[] = [];
  Object.assign(window, { keys });
  /** Calls back as soon as the work at hand is done: a message waits for its turn behind it. */
  const afterThis = (then: () => void) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = then;
    port2.postMessage("");
  };
  addEventListener(
    "input",
    ({ timeStamp }) => {
      let computed = Number.POSITIVE_INFINITY;
      afterThis(() => {
        computed = performance.now() - timeStamp;
      });
      requestAnimationFrame(() => {
        const frame = performance.now();
        afterThis(() => {
          const end = performance.now();
          keys.push({ painted: end - timeStamp, work: Math.min(computed, frame - timeStamp) + end - frame });
        });
      });
    },
    true,
  );
};

async function type(page: Page, address: string, slowdown: number): Promise<readonly Key[]> {
  const client = await page.context().newCDPSession(page);
  await page.goto(`${address}/numbers/charge-path/`);
  await page.waitForLoadState("networkidle");
  await client.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  await page.evaluate(watchKeys);
  const keysSoFar = () => page.evaluate(() => (window as unknown as { keys: Key[] }).keys);
  const field = page.locator('input[id="charge-path-r"]');
  await field.fill("2.");
  let shown = "";
  for (let i = 0; i < keystrokes; i++) {
    await field.press(i % 2 === 0 ? String(((i / 2) % 9) + 1) : "Backspace");
    while ((await keysSoFar()).length < i + 2) await page.waitForTimeout(20);
    const now = (await page.locator('[data-result="T_2"]').textContent()) ?? "";
    if (now === shown) throw new Error(`The result did not follow key ${i}.`);
    shown = now;
  }
  // The first is that of setting the field up.
  return (await keysSoFar()).slice(1);
}

const ms = (x: number) => `${x.toFixed(1)} ms`;

/** Prints how long a key takes on the charge path, at full speed and slowed down. */
export async function benchKeystrokes(browser: Browser, address: string): Promise<void> {
  for (const slowdown of [1, 6]) {
    const page = await browser.newPage();
    const keys = await type(page, address, slowdown);
    await page.close();
    const at = (part: number, of: keyof Key) => {
      const sorted = keys.map((key) => key[of]).sort((a, b) => a - b);
      return ms(sorted[Math.floor(part * (sorted.length - 1))] ?? Number.NaN);
    };
    console.log(
      `keystroke, ${slowdown}× slowdown   work ${at(0.5, "work")} (95 %: ${at(0.95, "work")}), on the screen after ${at(0.5, "painted")} (95 %: ${at(0.95, "painted")})`,
    );
  }
}
