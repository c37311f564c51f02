import { describe, expect, it, test } from "vitest";

const calculators = import.meta.glob("/src/calculators/*.ts");
const numbers = import.meta.glob("/content/numbers/*.mdx", { query: "?raw" });
const lessons = import.meta.glob<string>("/content/lessons/*.mdx", {
  eager: true,
  query: "?raw",
  import: "default",
});

const nameOf = (path: string) => path.replace(/^.*\/|\.\w+$/g, "");

/** Words that a reader meets: tags, their attributes and the marks of Markdown are not words. */
const words = (page: string) =>
  page
    .replace(/^---$[\s\S]*?^---$/m, "")
    .replace(/<Value\b[^>]*\/>/g, "number")
    .replace(/(asks|says|caption)="([^"]*)"/g, "> $2 <")
    .replace(/<[^>]*>/g, " ")
    .split(/\s+/)
    .filter((word) => /\p{L}|\d/u.test(word));

test("every calculator has a page, and every page a calculator", () => {
  expect(Object.keys(numbers).map(nameOf).sort()).toEqual(Object.keys(calculators).map(nameOf).sort());
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
