import type { MdastNode } from "satteri";
import { describe, expect, test } from "vitest";
import {
  attributeOf,
  childrenOf,
  contentFiles,
  parsePage,
  tagsIn,
  textOf,
  textsOf,
  within,
  wordsOf,
} from "./page.ts";

const lessons = contentFiles(
  import.meta.glob<string>("/content/lessons/*.mdx", { eager: true, query: "?raw", import: "default" }),
);
const pages = Object.entries(
  import.meta.glob<string>("/content/**/*.mdx", { eager: true, query: "?raw", import: "default" }),
).map(([path, source]) => ({ path, page: parsePage(source) }));

const isHeading = (node: MdastNode, depth: number) => node.type === "heading" && node.depth === depth;

/** What stands under a heading of the second rank, up to the next one. */
function section(page: MdastNode, title: RegExp): readonly MdastNode[] {
  const nodes = childrenOf(page);
  const start = nodes.findIndex((node) => isHeading(node, 2) && title.test(textOf(node)));
  const end = nodes.findIndex((node, i) => i > start && isHeading(node, 2));
  return start < 0 ? [] : nodes.slice(start + 1, end < 0 ? undefined : end);
}

/** Usual mistakes start in bold, and go on until the next one does. */
function mistakes(page: MdastNode): readonly (readonly MdastNode[])[] {
  const nodes = section(page, /^Usual mistakes$/);
  const startsBold = (node: MdastNode) => node.type === "paragraph" && childrenOf(node)[0]?.type === "strong";
  const starts = nodes.flatMap((node, i) => (startsBold(node) ? [i] : []));
  return starts.map((start, n) => nodes.slice(start, starts[n + 1]));
}

const labelsOf = (page: MdastNode, name: "Figure" | "Relation") =>
  tagsIn([page], name).map((tag) => attributeOf(tag, "label"));

/** The address of every numbered figure and equation, by the words that name it: `figure 2.3.1`. */
const numbered = new Map<string, string>(
  lessons.flatMap(({ id, page }) =>
    (["Figure", "Relation"] as const).flatMap((name) =>
      tagsIn([page], name).map((tag) => {
        const [kind, anchor] = name === "Figure" ? ["figure", "fig"] : ["equation", "eq"];
        const address = `/lessons/${id}/#${anchor}-${attributeOf(tag, "id")?.replaceAll("/", "-")}`;
        return [`${kind} ${attributeOf(tag, "label")}`, address] as const;
      }),
    ),
  ),
);

/** `figures 2.3.1 and 2.3.2` are figure 2.3.1 and figure 2.3.2. */
const named = (text: string): readonly string[] =>
  [...text.matchAll(/\b(figure|equation)s?\s((?:\d+\.\d+\.\d+(?:, | and | or | to )?)+)/gi)].flatMap(
    ([, kind = "", numbers = ""]) =>
      [...numbers.matchAll(/\d+\.\d+\.\d+/g)].map(([number]) => `${kind.toLowerCase()} ${number}`),
  );

describe.each(lessons)("$id", ({ id, page, matter }) => {
  test("says what it is for, how long it takes, and where it comes from", () => {
    expect(matter["lead"]).toMatch(/\S/);
    expect(matter["minutes"]).toBeGreaterThan(0);
    expect(matter["sources"]).toEqual(expect.arrayContaining([expect.anything()]));
  });

  test("opens with one figure", () => {
    const nodes = childrenOf(page);
    const opening = nodes.slice(
      0,
      nodes.findIndex(({ type }) => type === "heading"),
    );
    expect(tagsIn(opening, "Figure")).toHaveLength(1);
  });

  test("has its sections in the order of every lesson", () => {
    const titles = childrenOf(page)
      .filter((node) => isHeading(node, 2))
      .map((node) => textOf(node));
    expect(titles).toEqual([
      "The idea",
      expect.stringMatching(/^The formulas?$/),
      "Predict, then try",
      "Worked example",
      "Usual mistakes",
      "Check yourself",
    ]);
  });

  test("has no formula in a heading", () => {
    const headings = within(page).filter(({ type }) => type === "heading");
    const plain = ["heading", "text", "emphasis"];
    expect(headings.flatMap(within).filter(({ type }) => !plain.includes(type))).toEqual([]);
  });

  test("shows a formula", () => {
    expect(tagsIn(section(page, /^The formulas?$/), "Relation").length).toBeGreaterThanOrEqual(1);
  });

  test("asks for a prediction, and lets the reader try", () => {
    const parts = section(page, /^Predict, then try$/);
    const predictions = tagsIn(parts, "Predict");
    expect(predictions).toHaveLength(1);
    expect(tagsIn(predictions, "Guess").length).toBeGreaterThanOrEqual(2);
    expect(tagsIn(parts, "Calculator")).toHaveLength(1);
  });

  test("works an example", () => {
    expect(tagsIn(section(page, /^Worked example$/), "WorkedExample").length).toBeGreaterThanOrEqual(1);
  });

  test("names usual mistakes, and what each costs as a computed number", () => {
    expect(mistakes(page).length).toBeGreaterThanOrEqual(2);
    const uncounted = mistakes(page).filter((nodes) => tagsIn(nodes, "Value").length === 0);
    expect(uncounted.map(([first]) => first && textOf(first))).toEqual([]);
  });

  test("cautions, and asks questions to check oneself", () => {
    expect(tagsIn([page], "Caution").length).toBeGreaterThanOrEqual(1);
    expect(tagsIn(section(page, /^Check yourself$/), "Question").length).toBeGreaterThanOrEqual(2);
  });

  test("has at most 1000 words", () => {
    const words = textsOf(page).flatMap(wordsOf);
    expect(words.length).toBeLessThanOrEqual(1000);
    expect(words.length).toBeGreaterThan(200);
  });

  test.each(["Figure", "Relation"] as const)("numbers each %s in the order in which they stand", (name) => {
    const labels = labelsOf(page, name);
    expect(labels).toEqual(labels.map((_, i) => `${matter["number"]}.${i + 1}`));
  });

  test("names figures and equations that there are, and leads to them where it links", () => {
    expect(
      textsOf(page)
        .flatMap(named)
        .filter((name) => !numbered.has(name)),
    ).toEqual([]);
    const astray = within(page).flatMap((node) => {
      const address = node.type === "link" ? node.url.replace(/^#/, `/lessons/${id}/#`) : "";
      const names = node.type === "link" ? named(textOf(node)) : [];
      return names.filter((name) => numbered.get(name) !== address).map((name) => `${name}: ${address}`);
    });
    expect(astray).toEqual([]);
  });
});

test("no two lessons have the same number", () => {
  expect(lessons.length).toBeGreaterThan(0);
  const numbers = lessons.map(({ matter }) => matter["number"]);
  expect(numbers.filter((number, i) => numbers.indexOf(number) !== i)).toEqual([]);
});

test("every figure of the site has an anchor of its own", () => {
  const anchors = pages.flatMap(({ path, page }) =>
    tagsIn([page], "Figure").map((tag) => ({ path, id: attributeOf(tag, "id") })),
  );
  expect(anchors.filter(({ id }) => !id || !/^[a-z][a-z\d]*(-[a-z\d]+)*$/.test(id))).toEqual([]);
  const twice = anchors.filter(({ id }, i) => anchors.findIndex((other) => other.id === id) !== i);
  expect(twice).toEqual([]);
});
