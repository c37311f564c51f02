import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { figure, heading } from "./report.ts";

/** Builds the site into a folder and prints how long that takes. */
export function benchBuild(folder: string): void {
  const start = performance.now();
  const { status, stderr } = spawnSync("astro", ["build", "--outDir", folder], { encoding: "utf8" });
  if (status !== 0) throw new Error(`The build failed.\n${stderr}`);
  const elapsed = performance.now() - start;
  const pages = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".html"),
  );
  heading("the site");
  figure(
    "build",
    elapsed / 1000,
    "s",
    `${pages.length} pages, ${Math.round(elapsed / pages.length)} ms each`,
  );
}
