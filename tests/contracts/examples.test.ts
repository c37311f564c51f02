import { describe, expect, test } from "vitest";

const texts = import.meta.glob<string>("../../calc/**/*.ts", {
  eager: true,
  query: "?raw",
  import: "default",
});
const modules = import.meta.glob<Record<string, unknown>>("../../calc/**/*.ts", { eager: true });

/** Everything that calc/ exports, so that an example may use what its reader would import. */
const scope: Readonly<Record<string, unknown>> = Object.assign({}, ...Object.values(modules));

interface Example {
  readonly file: string;
  readonly code: string;
  /** The result as it is written behind the code: a number, and its SI unit or a word on it. */
  readonly shown: string;
}

const examples: readonly Example[] = Object.entries(texts).flatMap(([path, text]) =>
  [...text.matchAll(/@example([\s\S]*?)\*\//g)].map(([, comment = ""]) => {
    const [code = "", shown = ""] = comment.replaceAll(/\n\s*\*/g, " ").split("//");
    return { file: path.replace("../../calc/", ""), code: code.trim(), shown: shown.trim() };
  }),
);

/** `about 89 874.57 Pa` is 89874.57, with half a unit of the last digit: 0.005. */
function readShown(shown: string): { readonly value: number; readonly half: number } {
  const found = /^(?:about )?(-?\d{1,3}(?: \d{3})*|-?\d+)(?:\.(\d+))?(?:e(-?\d+))?(?=…|[^\d.]|$)/.exec(shown);
  if (!found) throw new Error(`no number in "${shown}"`);
  const [, whole = "", decimals = "", exponent = "0"] = found;
  const digits = `${whole.replaceAll(" ", "")}${decimals && `.${decimals}`}e${exponent}`;
  return { value: Number(digits), half: 0.5 * 10 ** (Number(exponent) - decimals.length) };
}

const evaluate = (code: string): unknown =>
  new Function(...Object.keys(scope), `"use strict"; return (${code});`)(...Object.values(scope));

test("shown numbers are read with their last digit", () => {
  expect(readShown("89 874.57 Pa")).toEqual({ value: 89874.57, half: 0.005 });
  expect(readShown("about 18.523e-6 Pa s").value).toBeCloseTo(18.523e-6, 15);
  expect(readShown("-100 m")).toEqual({ value: -100, half: 0.5 });
  expect(() => readShown("many")).toThrow("no number");
});

test("every relation has an example", () => {
  const exampled = new Set(examples.map(({ file }) => file));
  const relations = Object.entries(modules)
    .filter(([, module]) =>
      Object.values(module).some((x) => typeof x === "object" && x !== null && "compute" in x && "form" in x),
    )
    .map(([path]) => path.replace("../../calc/", ""));
  expect(relations.length).toBeGreaterThan(0);
  expect(relations.filter((file) => !exampled.has(file))).toEqual([]);
});

describe("an example is true to the digits that it shows", () => {
  test.for(examples)("$file: $code // $shown", ({ code, shown }) => {
    const { value, half } = readShown(shown);
    const computed = evaluate(code);
    expect(typeof computed).toBe("number");
    const off = Math.abs((computed as number) - value);
    expect(off, `${computed} for ${shown}`).toBeLessThanOrEqual(half * (shown.includes("…") ? 2 : 1.0001));
  });
});
