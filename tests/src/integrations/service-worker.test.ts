import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { writeWorker } from "../../../src/integrations/service-worker.ts";
import { type Edition, editionMark } from "../../../src/offline/edition.ts";

function site(files: Readonly<Record<string, string>>): string {
  const root = mkdtempSync(join(tmpdir(), "site-"));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(join(root, path, ".."), { recursive: true });
    writeFileSync(join(root, path), content);
  }
  return root;
}

const files = {
  "index.html": "<title>Home</title>",
  "a/index.html": "<title>A &amp; B · Home</title>",
  "_astro/x.12345678.js": "1",
  "embed/a/index.html": "framed",
  _headers: "/*",
};

const listOf = (root: string): string => readFileSync(join(root, "files.json"), "utf8");
const workerOf = (root: string): string => readFileSync(join(root, "sw.js"), "utf8");

test("lists pages by address with their titles, and leaves out what is never kept", async () => {
  const root = site(files);
  expect(await writeWorker(root)).toBe(3);
  const { files: listed } = JSON.parse(listOf(root)) as Edition;
  expect(Object.keys(listed)).toEqual(["", "_astro/x.12345678.js", "a/"]);
  expect(listed["a/"]?.[2]).toBe("A & B");
  expect(listed["_astro/x.12345678.js"]?.[0]).toBe("");
  expect(listed[""]?.[0]).toMatch(/^[\w-]{10}$/);
});

test("the worker is of the edition that the list describes, and of another once any file changes", async () => {
  const root = site(files);
  await writeWorker(root);
  const mark = await editionMark(listOf(root));
  expect(workerOf(root)).toContain(JSON.stringify(mark));
  await writeWorker(root);
  expect(await editionMark(listOf(root))).toBe(mark);
  writeFileSync(join(root, "a/index.html"), "<title>A</title>");
  await writeWorker(root);
  expect(workerOf(root)).not.toContain(JSON.stringify(mark));
});
