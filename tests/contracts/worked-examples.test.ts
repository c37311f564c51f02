import type { MdastNode } from "satteri";
import { describe, expect, test } from "vitest";
import { attributeOf, childrenOf, contentFiles, isTag, tagsIn, textsOf, wordsOf } from "./page.ts";

const examples = contentFiles(
  import.meta.glob<string>("/content/examples/*.mdx", { eager: true, query: "?raw", import: "default" }),
).map(({ id, matter, page }) => ({ id, matter, body: childrenOf(page).slice(1) }));

const isWrongAnswer = (node: MdastNode) => isTag(node) && node.name === "WrongAnswer";

describe.each(examples)("the example $id", ({ body, matter }) => {
  test("asks one question first, and more besides", () => {
    expect(matter["asks"]).toMatch(/^[A-Z].*\?$/);
    expect(matter["also"]).toEqual(expect.arrayContaining([expect.anything()]));
  });

  test("tells a story, then its wrong answers and nothing behind them", () => {
    const first = body.findIndex(isWrongAnswer);
    const story = body.slice(0, first);
    expect(story.flatMap((node) => textsOf(node)).flatMap(wordsOf).length).toBeGreaterThan(20);
    expect(body.slice(first).filter((node) => !isWrongAnswer(node))).toEqual([]);
  });

  test("counts each wrong answer, and says what it is in a sentence", () => {
    const wrong = tagsIn(body, "WrongAnswer");
    expect(wrong.length).toBeGreaterThanOrEqual(1);
    for (const one of wrong) {
      expect(attributeOf(one, "says")).toMatch(/^[A-Z].*\.$/);
      expect(tagsIn([one], "Value").length).toBeGreaterThanOrEqual(2);
    }
  });

  test("stands in the list where its number says", () => {
    const [chapter = 0, place = 0] = String(matter["number"]).split(".").map(Number);
    expect(chapter).toBeGreaterThan(0);
    expect(matter["order"]).toBe(100 * chapter + place);
  });
});

test("no two examples have the same number", () => {
  expect(examples.length).toBeGreaterThan(0);
  const numbers = examples.map(({ matter }) => matter["number"]);
  expect(numbers.filter((number, i) => numbers.indexOf(number) !== i)).toEqual([]);
});
