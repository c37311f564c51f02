import type { Page } from "playwright-core";
import { expect } from "vitest";
import { choose, field, open, parse } from "./site.ts";

export type Texts = Readonly<Record<string, string>>;

/** Opens a calculator's own page, makes the choices and types the values. */
export async function enter(page: Page, calculator: string, choices: Texts, values: Texts): Promise<void> {
  await open(page, `/numbers/${calculator}/`);
  for (const [key, option] of Object.entries(choices)) await choose(page, calculator, key, option);
  for (const [key, text] of Object.entries(values)) await field(page, calculator, key).fill(text);
}

const decimals = (shown: string): number => /\.(\d+)/.exec(shown)?.[1]?.length ?? 0;
const figures = (shown: string): number => shown.replace(/^[^1-9]*|[^\d]/g, "").length;

/** What is shown has to be what is expected, rounded to what is shown: three or four figures. */
export function expectShown(shown: Texts, expected: Readonly<Record<string, number>>): void {
  const off = Object.entries(expected).filter(([key, value]) => {
    const text = shown[key] ?? "";
    // A last figure of exactly five may go either way.
    const half = 0.501 * 10 ** -decimals(text);
    return !(Math.abs(parse(text) - value) <= half && figures(text) >= 3);
  });
  expect(off.map(([key, value]) => `${key}: ${shown[key]}, expected ${value}`)).toEqual([]);
}
