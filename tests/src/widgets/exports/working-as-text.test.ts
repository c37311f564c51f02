import katex from "katex";
import { describe, expect, test } from "vitest";
import {
  workingAsMarkdown,
  workingAsTex,
  workingAsText,
} from "../../../../src/widgets/exports/working-as-text.ts";
import { workingSteps } from "../../../../src/widgets/exports/working-steps.ts";
import { link, states } from "./every-state.ts";

const typeset = (tex: string, displayMode: boolean) =>
  katex.renderToString(tex, { displayMode, throwOnError: true, strict: "error" });

const unfilled = /⟦|⟧|undefined|NaN/;

test("there are states of every kind", () => expect(states.length).toBeGreaterThan(60));

describe.each(states)("%s", (_, worked) => {
  const steps = workingSteps(worked.outcome, worked.formulas, worked.around);

  test("as TeX: each step has its place, its formula and its numbers, and KaTeX sets them", () => {
    const text = workingAsTex(worked);
    expect(text).not.toMatch(unfilled);
    const items = text.split("\\item \\textbf{").slice(1);
    expect(items).toHaveLength(steps.length);
    for (const [i, item] of items.entries()) {
      const displayed = Array.from(item.matchAll(/^\\\[ (.*) \\\]$/gm), ([, tex = ""]) => tex);
      expect(displayed).toHaveLength(1 + (steps[i]?.numbers.length ?? 0));
      expect(displayed[0]).toBe(steps[i]?.symbols);
      for (const tex of displayed) typeset(tex, true);
      for (const [, tex = ""] of item.matchAll(/^that is \$(.*)\$$/gm)) typeset(tex, false);
      expect(item).toContain("Source: ");
    }
    // What is not mathematics holds nothing that TeX would stumble over.
    const running = text
      .replace(/^%.*$/gm, "")
      .replace(/\\\[.*\\\]/g, "")
      .replace(/\$[^$]*\$/g, "")
      .replace(/\\[A-Za-z]+\*?|\\[,&%$#_{}]/g, "");
    expect(running).not.toMatch(/[\\&%$#_^]|[\u2212×µ°⁰-⁹]/u);
  });

  test("as Markdown: each step has its place, its formula and its numbers, between dollars", () => {
    const text = workingAsMarkdown(worked);
    expect(text).not.toMatch(unfilled);
    const items = text.split(/^\d+\. /m).slice(1);
    expect(items).toHaveLength(steps.length);
    for (const [i, item] of items.entries()) {
      const formulas = Array.from(item.replaceAll("\\$", "").matchAll(/\$([^$]*)\$/g), ([, tex = ""]) => tex);
      const step = steps[i];
      expect(formulas).toEqual([
        step?.symbols,
        ...(step?.numbers.map(({ tex }) => tex) ?? []),
        ...(step?.also === undefined ? [] : [step.also]),
      ]);
      for (const tex of formulas) typeset(tex, false);
      expect(item).toMatch(/Source: \[.+\]\(https:\/\/example\.org\/sources\/#[\w-]+\), /);
    }
    expect(text.endsWith(`<${link}>`)).toBe(true);
  });

  test("as text: each step in plain lines, with nothing of TeX left", () => {
    const text = workingAsText(worked);
    expect(text).not.toMatch(unfilled);
    const items = text.split(/^\d+\. /m).slice(1);
    expect(items).toHaveLength(steps.length);
    for (const [i, item] of items.entries()) {
      const lines = item.split("\n").filter((line) => line.startsWith("   "));
      const step = steps[i];
      expect(lines).toHaveLength((step?.numbers.length ?? 0) + (step?.also === undefined ? 2 : 3));
      for (const line of lines) expect(line).not.toMatch(/[\\{}&$]|\( |\^\(\)|mathrm|frac/);
      for (const line of lines.slice(0, -1)) {
        expect([...line].filter((c) => c === "(").length, line).toBe(
          [...line].filter((c) => c === ")").length,
        );
      }
    }
  });
});
