import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { fileOf, pages, read } from "./dist.ts";

// Others link to these addresses, so they stay: one a line, sorted. An anchor becomes permanent by being listed.
const list = join(import.meta.dirname, "anchors.txt");
const permanent = readFileSync(list, "utf8").split("\n").filter(Boolean);

const isAnchor = (id: string, tag: string) =>
  (/^(?:eq|fig|ex|caution)-/.test(id) && !id.endsWith("-title")) || tag.includes('class="aside caution"');
const built = pages.flatMap((page) =>
  Array.from(
    read(fileOf(page))
      .toString()
      .matchAll(/<\w[^>]*\sid="([^"]+)"[^>]*>/g),
    ([tag, id = ""]) => ({ tag, id }),
  )
    .filter(({ tag, id }) => isAnchor(id, tag))
    .map(({ id }) => `${page}#${id}`),
);

test("no permanent anchor of an equation, a figure, an example or a caution is gone", () => {
  const more = built.filter((anchor) => !permanent.includes(anchor)).sort();
  if (more.length > 0) console.info(`Not permanent yet. Once published, add to ${list}:\n${more.join("\n")}`);
  expect(permanent.length).toBeGreaterThan(0);
  expect(permanent.filter((anchor) => !built.includes(anchor))).toEqual([]);
});

test("the list of permanent anchors is sorted, and names nothing twice", () => {
  expect(permanent).toEqual([...new Set(permanent)].sort());
});
