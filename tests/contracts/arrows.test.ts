import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, test } from "vitest";
import { constants } from "../../calc/constants.ts";

const root = join(import.meta.dirname, "../..");

const filesBelow = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs|astro|mdx)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));

const withoutComments = (text: string): string =>
  text.replace(/(?<=^|\s)\/\*[\s\S]*?\*\//g, "").replace(/(?<![:"'`])\/\/.*$/gm, "");

const sources = [...filesBelow("calc"), ...filesBelow("src"), ...filesBelow("content")].map((file) => ({
  file,
  text: withoutComments(readFileSync(join(root, file), "utf8")),
}));

const specifier =
  /\b(?:from|import)\s*\(?\s*["']([^"'\n]+)["']|import\.meta\.glob[^(]*\(\s*["']([^"'\n]+)["']/g;

/** What a file imports: a path below the project, or the name of a package. */
function importsOf({ file, text }: (typeof sources)[number]): readonly string[] {
  return [...text.matchAll(specifier)].map(([, named, globbed]) => {
    const what = (named ?? globbed ?? "").replace(/\?.*$/, "");
    if (what.startsWith(".")) return relative(root, join(root, dirname(file), what));
    return what.startsWith("/") ? what.slice(1) : `npm:${what}`;
  });
}

interface Arrow {
  readonly from: string;
  /** Openings of what the folder may import. */
  readonly to: readonly string[];
  readonly because: string;
}

const shownByPages = [
  "calc/",
  "src/offline/",
  "src/calculators/",
  "src/widgets/",
  "src/checks/",
  "src/integrations/",
  "src/components/",
  "npm:astro:content",
];

const arrows: readonly Arrow[] = [
  { from: "calc/", to: ["calc/"], because: "physics knows neither the site nor a package" },
  {
    from: "src/calculators/engine/",
    to: ["calc/", "src/calculators/engine/"],
    because: "it serves any calculator",
  },
  {
    from: "src/calculators/",
    to: ["calc/", "src/calculators/"],
    because: "a definition is data over a model",
  },
  {
    from: "src/widgets/",
    to: [
      "calc/",
      "src/calculators/engine/",
      "src/calculators/*.ts",
      "src/widgets/",
      // The look of what only a finger needs, by its address.
      "src/styles/keys.css",
      "npm:preact",
      "npm:nanostores",
      "npm:@nanostores/preact",
      "npm:d3-contour",
      "npm:lean-qr",
      "npm:lean-qr/extras/svg",
      "npm:pure-rand",
    ],
    because: "widgets know what a calculator is, never one by name, and little may reach the browser",
  },
  {
    from: "src/integrations/",
    to: ["calc/", "src/offline/edition.ts", "src/integrations/", "npm:", "node:"],
    because: "build steps read physics, and what an edition is",
  },
  {
    from: "src/offline/",
    to: ["src/offline/", "src/widgets/at-root.ts"],
    because: "what keeps pages knows files, and nothing that stands in them",
  },
  {
    from: "src/checks/",
    to: ["calc/", "content/checks/", "src/checks/", "npm:astro/zod", "npm:pure-rand"],
    because: "checks run physics against data",
  },
  {
    from: "src/components/",
    to: [...shownByPages, "npm:preact", "npm:preact-render-to-string"],
    because: "a component shows what lies below it, and knows no page that it stands on",
  },
  {
    from: "src/layouts/",
    to: [...shownByPages, "src/layouts/", "src/styles/", "src/fonts/", "npm:katex"],
    because: "a layout sets components on a page",
  },
  {
    from: "src/pages/",
    to: [...shownByPages, "src/layouts/", "src/styles/", "content/", "package.json"],
    because: "a page is the end of all arrows",
  },
  { from: "src/new/", to: ["src/new/", "node:"], because: "the scaffold writes files and runs none" },
  { from: "content/", to: ["src/components/"], because: "texts name things by id" },
];

/** The arrows of a file: those of the deepest folder that has some. */
const arrowOf = (file: string): Arrow | undefined =>
  arrows.filter(({ from }) => file.startsWith(from)).sort((a, b) => b.from.length - a.from.length)[0];

const isAllowed = (target: string, { to }: Arrow): boolean =>
  to.some((start) =>
    start.startsWith("npm:") && start !== "npm:"
      ? target === start || target.startsWith(`${start}/`)
      : target.startsWith(start) || (start === "npm:" && target.startsWith("npm:")),
  ) ||
  (to.includes("node:") && target.startsWith("npm:node:"));

describe.each(arrows)("$from", (arrow) => {
  const ruled = sources.filter(({ file }) => arrowOf(file) === arrow);

  test("holds files", () => expect(ruled).not.toEqual([]));

  test(`imports only what it may: ${arrow.because}`, () => {
    const wrong = ruled.flatMap((source) =>
      importsOf(source)
        .filter((target) => !isAllowed(target, arrow))
        .map((target) => `${source.file} imports ${target}`),
    );
    expect(wrong).toEqual([]);
  });
});

test("nothing imports a page", () => {
  const wrong = sources.flatMap((source) =>
    importsOf(source)
      .filter((target) => target.startsWith("src/pages/"))
      .map((target) => `${source.file} imports ${target}`),
  );
  expect(wrong).toEqual([]);
});

test("the reader of imports sees imports", () => {
  const seen = importsOf({
    file: "src/widgets/a.tsx",
    text: 'import type { A } from "./b.ts";\nimport "katex";\nconst c = await import("../../calc/d.ts");\nimport.meta.glob<X>("../calculators/*.ts");\nexport { e } from "mathjs";',
  });
  expect(seen).toEqual(["src/widgets/b.ts", "npm:katex", "calc/d.ts", "src/calculators/*.ts", "npm:mathjs"]);
});

test("the arrows forbid what they should", () => {
  const may = (file: string, target: string) => {
    const arrow = arrowOf(file);
    return arrow !== undefined && isAllowed(target, arrow);
  };
  expect(may("src/components/Foot.astro", "src/widgets/wake.ts")).toBe(true);
  expect(may("src/components/Foot.astro", "src/layouts/Page.astro")).toBe(false);
  expect(may("src/components/Foot.astro", "npm:mathjs")).toBe(false);
  expect(may("src/layouts/Page.astro", "src/pages/index.astro")).toBe(false);
  expect(may("src/pages/index.astro", "src/new/scaffold.ts")).toBe(false);
  expect(may("src/checks/check.ts", "src/calculators/engine/link.ts")).toBe(false);
  expect(may("src/integrations/lean-relations.ts", "src/widgets/slots.ts")).toBe(false);
  expect(may("src/new/new.ts", "calc/symbols.ts")).toBe(false);
  expect(may("src/new/new.ts", "npm:node:fs")).toBe(true);
});

// Units are defined on their own, and conditions that flows are stated at only happen to use the same figures.
const otherHomes = ["calc/constants.ts", "calc/quantity/units.ts", "calc/fluids/stated-flow.ts"];

test("the digits of a constant stand once in calc/", () => {
  const isTelling = (digits: string) =>
    digits.replace(/e.*$|[.]|^0[.]0*/g, "").replace(/0+$/, "").length >= 6;
  const telling = new Map(
    Object.entries(constants)
      .map(([name, { value }]) => [value, name] as const)
      .filter(([value]) => isTelling(String(value))),
  );
  expect(telling.size).toBeGreaterThan(5);
  const repeated = sources
    .filter(({ file }) => file.startsWith("calc/") && !otherHomes.includes(file))
    .flatMap(({ file, text }) =>
      [...text.matchAll(/(?<![\w.])\d[\d_]*(?:\.\d+)?(?:e[-+]?\d+)?/g)]
        .map(([literal]) => telling.get(Number(literal.replaceAll("_", ""))))
        .filter((name) => name !== undefined)
        .map((name) => `${file} repeats ${name}`),
    );
  expect(repeated).toEqual([]);
});
