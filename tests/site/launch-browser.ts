import { existsSync } from "node:fs";
import { type BrowserServer, chromium } from "playwright-core";

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-sync",
  "--no-first-run",
];

// The package is made for one page in one process; there, closing a visitor's page closes the browser.
const oneProcess = new Set(["--single-process", "--no-zygote"]);

const named = process.env["CHROME_PATH"];

/** The program of the browser that CHROME_PATH names or that the machine has, if there is one. */
export const systemBrowser = (): string | undefined =>
  named === "packed" ? undefined : [named, "/usr/bin/chromium"].find((path) => path && existsSync(path));

/** The browser of the machine, or the one that a package brings where there is none. Tests connect to it. */
export async function launchBrowser(): Promise<BrowserServer> {
  const system = systemBrowser();
  if (system) return chromium.launchServer({ executablePath: system, args: quiet });
  // The package unpacks the libraries that a bare machine lacks only if this is set before it is loaded.
  process.env["AWS_LAMBDA_JS_RUNTIME"] ??= "nodejs24.x";
  const { default: packed } = await import("@sparticuz/chromium");
  return chromium.launchServer({
    executablePath: await packed.executablePath(),
    args: [...packed.args.filter((arg) => !oneProcess.has(arg)), ...quiet],
  });
}
