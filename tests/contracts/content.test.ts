import { describe, expect, it } from "vitest";
import type { Calculator } from "../../src/calculators/engine/calculator.ts";

const calculators = import.meta.glob<{ default: Calculator }>("/src/calculators/*.ts", { eager: true });
const numbers = import.meta.glob<string>("/content/numbers/*.mdx", {
  eager: true,
  query: "?raw",
  import: "default",
});
const lessons = import.meta.glob<string>("/content/lessons/*.mdx", {
  eager: true,
  query: "?raw",
  import: "default",
});

const nameOf = (path: string) => path.replace(/^.*\/|\.\w+$/g, "");

/** The value of one line of frontmatter, without quotes. */
function line(page: string, key: string): string | undefined {
  const front = page.split(/^---$/m)[1] ?? "";
  return new RegExp(`^${key}: (.*)$`, "m").exec(front)?.[1]?.replace(/^"(.*)"$/, "$1");
}

/** Words that a reader meets: tags, their attributes and the marks of Markdown are not words. */
const words = (page: string) =>
  page
    .replace(/^---$[\s\S]*?^---$/m, "")
    .replace(/<Value\b[^>]*\/>/g, "number")
    .replace(/(asks|says|caption)="([^"]*)"/g, "> $2 <")
    .replace(/<[^>]*>/g, " ")
    .split(/\s+/)
    .filter((word) => /\p{L}|\d/u.test(word));

describe("every calculator has a page", () => {
  it.each(Object.values(calculators).map(({ default: calculator }) => [calculator.id, calculator] as const))(
    "%s, which asks the same question under the same title",
    (id, { title, asks, group }) => {
      const page = numbers[`/content/numbers/${id}.mdx`];
      expect(page, `content/numbers/${id}.mdx`).toBeDefined();
      if (!page) return;
      expect({
        title: line(page, "title"),
        asks: line(page, "asks"),
        group: line(page, "group"),
      }).toEqual({ title, asks, group });
    },
  );

  it("and every page a calculator", () => {
    expect(Object.keys(numbers).map(nameOf).sort()).toEqual(Object.keys(calculators).map(nameOf).sort());
  });
});

describe("every lesson", () => {
  it.each(Object.entries(lessons).map(([path, page]) => [nameOf(path), page] as const))(
    "%s has at most 1000 words",
    (_, page) => {
      expect(words(page).length).toBeLessThanOrEqual(1000);
      expect(words(page).length).toBeGreaterThan(200);
    },
  );
});
