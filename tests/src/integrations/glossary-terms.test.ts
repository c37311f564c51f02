import { satteri } from "@astrojs/markdown-satteri";
import { expect, test } from "vitest";
import { glossaryTerms } from "../../../src/integrations/glossary-terms.ts";

const terms = [
  { id: "pressure", term: "pressure" },
  { id: "total-pressure", term: "total pressure", also: ["stagnation pressure"] },
  { id: "pass", term: "pass" },
  { id: "transfer-units", term: "transfer units", also: ["NTU"] },
];
const processor = satteri({ hastPlugins: [glossaryTerms(terms, "/lessons/")] });

/** The terms that a text opens: their ids, each with the words that were taken. */
async function opened(text: string, path = "/content/lessons/a.mdx"): Promise<readonly string[]> {
  const renderer = await processor.createMdxRenderer?.({ syntaxHighlight: false }, { optimize: false });
  if (!renderer) throw new Error("the Markdown processor renders no MDX");
  const { code } = await renderer.process(text, path, {});
  return [...code.matchAll(/\(Term, \{\s*id: "([^"]+)",\s*children: "([^"]*)"/g)].map(
    ([, id, words]) => `${id}: ${words}`,
  );
}

test("a term opens where it is first used, in whatever case, and a plural counts", async () => {
  expect(await opened("Pressures rise. A pressure falls.\n\nThe pass, and *NTU*.")).toEqual([
    "pressure: Pressures",
    "pass: pass",
    "transfer-units: NTU",
  ]);
});

test("the longer term wins", async () => {
  expect(await opened("The stagnation pressure and its pressure.")).toEqual([
    "total-pressure: stagnation pressure",
    "pressure: pressure",
  ]);
});

test("a word inside another is left alone", async () => {
  expect(await opened("A compass, pass-through, overpressure.")).toEqual([]);
});

test("headings, links and code stay as they are, and so does what a component shows", async () => {
  const text =
    "## The pass\n\n[pass](/) and `pass`\n\n<Sheet>\n\nA pass.\n\n</Sheet>\n\n<Note>\n\nThe last pass.\n\n</Note>";
  expect(await opened(text)).toEqual(["pass: pass"]);
});

test("other texts than lessons are left alone", async () => {
  expect(await opened("A pass.", "/content/numbers/a.mdx")).toEqual([]);
});
