// Prints speeds, ratios, their change since they were last recorded, and how the lessons read; `-- --record` records them.
// Speeds belong to the machine that they were measured on, so no test asserts them.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { launchBrowser } from "../site/launch-browser.ts";
import { serve } from "../site/serve.ts";
import { benchBuild } from "./build.ts";
import { benchCircuit } from "./circuit.ts";
import { benchExchanger } from "./exchanger.ts";
import { benchHostile } from "./hostile.ts";
import { benchKeystrokes } from "./keystroke.ts";
import { benchPhysics } from "./physics.ts";
import { benchReading } from "./reading.ts";
import { begin, end } from "./report.ts";
import { benchSolving } from "./solving.ts";
import { benchStandingIn } from "./standing-in.ts";
import { benchSweeping } from "./sweeping.ts";
import { benchTwoStages } from "./two-stages.ts";
import { benchUncertainty } from "./uncertainty.ts";

begin();
benchPhysics();
benchExchanger();
benchStandingIn();
benchTwoStages();
benchCircuit();
benchSolving();
benchSweeping();
benchUncertainty();
benchReading();
await benchHostile();

const folder = mkdtempSync(join(tmpdir(), "bench-"));
const stops: (() => unknown)[] = [() => rmSync(folder, { recursive: true })];
try {
  benchBuild(folder);
  const [site, server] = await Promise.all([serve(folder), launchBrowser()]);
  stops.unshift(site.stop, () => server.close());
  const browser = await chromium.connect(server.wsEndpoint());
  await benchKeystrokes(browser, site.address);
} finally {
  for (const stop of stops) await stop();
}
end(process.argv.includes("--record"));
