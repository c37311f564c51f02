import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

// Contrast ratio and its limits: WCAG 2.2, success criteria 1.4.3 and 1.4.11 (from memory).
const tokens = new Map(
  [
    ...readFileSync("src/styles/tokens.css", "utf8").matchAll(
      /--([\w-]+):\s*light-dark\((#[\da-f]{6}), (#[\da-f]{6})\)/g,
    ),
  ].map(([, name = "", light = "", dark = ""]) => [name, { light, dark }]),
);

type Scheme = "light" | "dark";

function colour(name: string, scheme: Scheme): string {
  const token = tokens.get(name);
  if (!token) throw new Error(`tokens.css has no colour --${name}`);
  return token[scheme];
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const ratio = (front: string, ground: string, scheme: Scheme) =>
  contrast(colour(front, scheme), colour(ground, scheme));

const grounds = ["paper", "sheet", "field", "caution"];
const text: readonly (readonly [front: string, grounds: readonly string[]])[] = [
  ["ink", grounds],
  ["ink-2", grounds],
  ["act", grounds],
  ["bad", ["paper", "sheet", "field"]],
  ["amber", ["paper", "sheet"]],
  ["warm", ["paper", "sheet"]],
  ["cold", ["paper", "sheet"]],
  ["on-act", ["act"]],
  ["paper", ["ink"]],
];
const graphics: typeof text = [
  ["line", ["paper", "sheet", "field"]],
  ["on-air", [0, 1, 2, 3, 4, 5, 6].map((n) => `air-${n}`)],
];

test("black on white has the largest ratio there is", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
  expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
});

describe.each<Scheme>(["light", "dark"])("%s", (scheme) => {
  const pairs = (list: typeof text) =>
    list.flatMap(([front, on]) => on.map((ground) => [front, ground] as const));

  test.each(pairs(text))("text: %s on %s", (front, ground) => {
    expect(ratio(front, ground, scheme)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(pairs(graphics))("edges and drawings: %s on %s", (front, ground) => {
    expect(ratio(front, ground, scheme)).toBeGreaterThanOrEqual(3);
  });
});

test("every colour has its two sides", () => {
  const named = [...readFileSync("src/styles/tokens.css", "utf8").matchAll(/light-dark\(/g)];
  expect(tokens.size).toBe(named.length);
});
