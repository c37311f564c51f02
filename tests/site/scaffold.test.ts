import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { stripVTControlCharacters } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");
const made = [
  ["lesson", "scaffolded-lesson"],
  ["example", "scaffolded-example"],
  ["relation", "flow/scaffolded-relation"],
  ["calculator", "scaffolded-calculator"],
] as const;

// The project's own files stay as they are: one of each is scaffolded into a copy, which goes away afterwards.
let copy = "";
let files: readonly string[] = [];
const run = (command: string, ...args: readonly string[]) =>
  execFileSync(command, args, { cwd: copy, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "scaffolded-"));
  for (const part of [
    "calc",
    "content",
    "public",
    "src",
    "tests/contracts",
    "astro.config.mjs",
    "biome.json",
    "package.json",
    "tsconfig.json",
    "vitest.config.ts",
  ])
    cpSync(join(root, part), join(copy, part), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
  files = made
    .flatMap(([kind, id]) => run("node", "src/new/new.ts", kind, id).split("\n"))
    .filter((line) => existsSync(join(copy, line)) && line !== "");
}, 60_000);
afterAll(() => rmSync(copy, { recursive: true, force: true }));

test("one of each, as it is scaffolded, is built into its page", () => {
  run("astro", "build");
  const page = (path: string) => readFileSync(join(copy, "dist", path, "index.html"), "utf8");
  expect(page("lessons/scaffolded-lesson")).toContain("<h1>Scaffolded lesson</h1>");
  expect(page("examples/scaffolded-example")).toContain("Scaffolded example");
  expect(page("numbers/scaffolded-calculator")).toMatch(/data-result="lambda"[^>]*>0\.849/);
  expect(page("checks")).toContain('id="check-scaffolded-relation"');
  expect(page("checks")).toContain('id="check-scaffolded-calculator"');
}, 400_000);

test("one of each meets the contracts, the types and the format of the project", () => {
  const contracts = [
    "calculators",
    "checks",
    "content",
    "examples",
    "lessons",
    "relations",
    "typed-numbers",
  ].map((name) => `tests/contracts/${name}.test`);
  const said = run("vitest", "run", "--project", "unit", ...contracts, "-t", "scaffolded");
  expect(Number(/Tests\D*(\d+) passed/.exec(stripVTControlCharacters(said))?.[1])).toBeGreaterThan(20);
  const written = (ending: string) => files.filter((file) => file.endsWith(ending));
  run("biome", "check", "--vcs-enabled=false", ...written(".ts"));
  run("prettier", "--check", ...written(".mdx"));
  const { stdout } = spawnSync("tsc", ["--noEmit", "-p", "."], { cwd: copy, encoding: "utf8" });
  expect(stdout.split("\n").filter((line) => line.includes("scaffolded"))).toEqual([]);
}, 240_000);

test("nothing of it is in the project", () => {
  expect(files).toHaveLength(8);
  expect(files.filter((file) => existsSync(join(root, file)))).toEqual([]);
});
