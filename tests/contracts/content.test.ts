import { expect, test } from "vitest";

const calculators = import.meta.glob("/src/calculators/*.ts");
const numbers = import.meta.glob("/content/numbers/*.mdx", { query: "?raw" });

const nameOf = (path: string) => path.replace(/^.*\/|\.\w+$/g, "");

test("every calculator has a page, and every page a calculator", () => {
  expect(Object.keys(numbers).map(nameOf).sort()).toEqual(Object.keys(calculators).map(nameOf).sort());
});
