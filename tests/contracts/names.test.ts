import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");

/** Files of the project, without what is ignored. */
const files = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
  cwd: root,
  encoding: "utf8",
})
  .split("\n")
  .filter((file) => /\.(ts|tsx|mjs|astro|mdx|md|css|json|yaml|bib|csl|txt)$|^\.ci\/|^LICENSE$/.test(file))
  .filter((file) => file !== "package-lock.json");

// Put together from parts, so that this file does not mention them either.
const words = [
  ["TRADE", "md"].join("."),
  ["DESIGN", "md"].join("."),
  ["STACK", "md"].join("."),
  ["LOOK", "md"].join("."),
  ["STYLE", "md"].join("."),
  ["/work", "shared"].join("/"),
  ["/work", "main"].join("/"),
  ["helper", "session"].join(" "),
  ["/tmp", "b", ""].join("/"),
];

test("no file mentions a paper that is not part of the project", () => {
  const mentions = files.flatMap((file) => {
    const text = readFileSync(join(root, file), "utf8");
    return words.filter((word) => text.includes(word)).map((word) => `${file} mentions ${word}`);
  });
  expect(files.length).toBeGreaterThan(50);
  expect(mentions).toEqual([]);
});
