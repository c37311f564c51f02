import type { Check, Value } from "./check.ts";

export interface OutputResult {
  readonly output: string;
  readonly expected: Value;
  readonly computed: Value;
  /** (computed - expected) / expected; null where there is no such number. */
  readonly deviation: number | null;
  /** computed - expected, in the unit of the output; null where there is no such number. */
  readonly difference: number | null;
  /** The band in words. */
  readonly allowed: string;
  readonly pass: boolean;
}

interface Band {
  readonly relative: number;
  readonly absolute: number;
}

/** The band of one output: the tight one where we use the very same equations, else the tolerance of the file. */
function band({ tolerance, faithful }: Check, output: string): Band {
  if (faithful?.outputs.includes(output)) return { relative: faithful.relative, absolute: 0 };
  return {
    relative: tolerance.per_output?.[output] ?? tolerance.relative,
    absolute: tolerance.absolute?.[output] ?? 0,
  };
}

function words({ relative, absolute }: Band, unit: string): string {
  const percent =
    relative < 1e-5
      ? `${Number((1e6 * relative).toPrecision(12))} ppm`
      : `${Number((100 * relative).toPrecision(12))} %`;
  return absolute > 0 ? `${percent} or ${absolute}${unit === "1" ? "" : ` ${unit}`}` : percent;
}

/**
 * Holds one computed output against what the file expects. A number passes inside the relative or the absolute band;
 * a string and null have to match exactly, and so does a number against either of them.
 */
export function compare(check: Check, output: string, expected: Value, computed: Value): OutputResult {
  if (typeof expected !== "number")
    return {
      output,
      expected,
      computed,
      deviation: null,
      difference: null,
      allowed: "exactly",
      pass: computed === expected,
    };
  const limits = band(check, output);
  const allowed = words(limits, (check.units[output] ?? "1").split(" (")[0] ?? "1");
  if (typeof computed !== "number" || !Number.isFinite(computed))
    return { output, expected, computed, deviation: null, difference: null, allowed, pass: false };
  const difference = computed - expected;
  return {
    output,
    expected,
    computed,
    deviation: expected === 0 ? null : difference / expected,
    difference,
    allowed,
    pass: Math.abs(difference) <= Math.max(limits.relative * Math.abs(expected), limits.absolute),
  };
}
