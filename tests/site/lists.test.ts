import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { read } from "./dist.ts";

// A fault in the file makes the build go on without a single term.
test("the glossary page has every term of the glossary", () => {
  const file = readFileSync(join(import.meta.dirname, "../../content/glossary.yaml"), "utf8");
  const ids = Array.from(file.matchAll(/^- id: (\S+)$/gm), ([, id = ""]) => id);
  expect(ids.length).toBeGreaterThan(50);
  expect(ids).toEqual([...new Set(ids)].sort());
  const page = read("/glossary/index.html").toString();
  expect(ids.filter((id) => !page.includes(`id="${id}"`))).toEqual([]);
});
