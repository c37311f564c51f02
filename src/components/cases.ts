import type { CheckResult } from "../checks/run-check.ts";

/** More comparisons than this make a long page that nobody reads: the rest is in the file of the check. */
const SHOWN = 60;

/**
 * The cases of a check that its page shows: all, or of a long list those that come out farthest from what is expected, in
 * the order of the list.
 */
export function casesShown({ cases }: CheckResult): CheckResult["cases"] {
  const farthest = (one: (typeof cases)[number]) =>
    Math.max(...one.outputs.map(({ deviation, pass }) => (pass ? Math.abs(deviation ?? 0) : Infinity)));
  const chosen = new Set<(typeof cases)[number]>();
  let rows = 0;
  for (const one of [...cases].sort((a, b) => farthest(b) - farthest(a))) {
    rows += one.outputs.length;
    if (rows > SHOWN && chosen.size > 0) break;
    chosen.add(one);
  }
  return cases.filter((one) => chosen.has(one));
}

const quoted = (value: string): string => (/[",\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value);

/** All comparisons of a check, one a line, as comma-separated values after a line of names. */
export function casesAsCsv({ check, cases }: CheckResult): string {
  const inputs = [...new Set(cases.flatMap((one) => Object.keys(one.in)))];
  const header = [
    ...inputs,
    "output",
    "unit",
    "expected",
    "computed",
    "relative deviation",
    "allowed",
    "within",
  ];
  const lines = cases.flatMap((one) =>
    one.outputs.map(({ output, expected, computed, deviation, allowed, pass }) => [
      ...inputs.map((name) => one.in[name] ?? ""),
      output,
      check.units[output] ?? "",
      expected ?? "none",
      computed ?? "none",
      deviation ?? "",
      allowed,
      pass ? "yes" : "no",
    ]),
  );
  return `${[header, ...lines].map((line) => line.map((cell) => quoted(String(cell))).join(",")).join("\n")}\n`;
}
