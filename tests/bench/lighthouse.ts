// Prints what Lighthouse says of one page of each kind, on a phone and on a desk: node tests/bench/lighthouse.ts [part of a
// page's address]. Lighthouse is fetched when it is asked for, since it would be a quarter more to install for this alone.
import { spawnSync } from "node:child_process";
import { tmpdir } from "node:os";
import { dist, examplePages, lessonPages, quickPages, tablePages } from "../site/dist.ts";
import { systemBrowser } from "../site/launch-browser.ts";
import { serve } from "../site/serve.ts";

const version = "13.5.0";
const categories = ["performance", "accessibility", "best-practices", "seo"];

interface Audit {
  readonly id: string;
  readonly title: string;
  readonly score: number | null;
  readonly displayValue?: string;
  readonly details?: { readonly items?: readonly unknown[] };
}

interface Report {
  readonly runtimeError?: { readonly message: string };
  readonly categories: Readonly<
    Record<
      string,
      {
        readonly score: number;
        readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
      }
    >
  >;
  readonly audits: Readonly<Record<string, Audit>>;
}

function inspect(address: string, program: string, isDesk: boolean): Report {
  const { status, stdout, stderr } = spawnSync(
    "npx",
    [
      "--yes",
      `lighthouse@${version}`,
      address,
      "--quiet",
      "--output=json",
      `--only-categories=${categories.join(",")}`,
      "--chrome-flags=--headless=new --no-sandbox --disable-gpu",
      ...(isDesk ? ["--preset=desktop"] : []),
    ],
    { cwd: tmpdir(), env: { ...process.env, CHROME_PATH: program }, encoding: "utf8", maxBuffer: 2 ** 28 },
  );
  if (status !== 0) throw new Error(`Lighthouse failed on ${address}.\n${stderr}`);
  const report = JSON.parse(stdout) as Report;
  if (report.runtimeError) throw new Error(report.runtimeError.message);
  return report;
}

/** The scores of a page in a line, and under it each audit that is not passed in full, with what it is about. */
function print(view: string, { categories, audits }: Report): void {
  const scores = Object.entries(categories).map(([name, { score }]) => `${name} ${Math.round(score * 100)}`);
  const times = [
    ["LCP", "largest-contentful-paint"],
    ["TBT", "total-blocking-time"],
    ["CLS", "cumulative-layout-shift"],
  ].map(([short, id = ""]) => `${short} ${audits[id]?.displayValue}`);
  console.log(`  ${view.padEnd(8)}${[...scores, ...times].join(", ")}`);
  for (const [name, { auditRefs }] of Object.entries(categories))
    for (const { id, weight } of auditRefs) {
      const audit = audits[id];
      if (!audit || audit.score === null || audit.score >= 1) continue;
      console.log(
        `    ${name}, weight ${weight}: ${id} ${audit.score.toFixed(2)}, ${audit.displayValue ?? audit.title}`,
      );
      // The parts of speed are known by their name; elsewhere it matters which elements are meant.
      const items = name === "performance" ? [] : (audit.details?.items?.slice(0, 3) ?? []);
      for (const item of items) console.log(`      ${JSON.stringify(item).slice(0, 300)}`);
    }
}

const program = systemBrowser();
if (!program) throw new Error("There is no browser here. Name one with CHROME_PATH.");
const kinds = ["/", lessonPages[0], "/numbers/charge-path/", quickPages[0], examplePages[0], tablePages[0]];
const wanted = kinds.filter((path) => path?.includes(process.argv[2] ?? ""));
const site = await serve(dist);
try {
  for (const path of wanted) {
    console.log(path);
    for (const isDesk of [false, true])
      print(isDesk ? "desk" : "phone", inspect(site.address + path, program, isDesk));
  }
} finally {
  site.stop();
}
