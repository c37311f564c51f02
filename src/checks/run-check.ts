import { DomainError } from "../../calc/quantity/domain-error.ts";
import { type Recording, recording, type Step } from "../../calc/relation/trace.ts";
import type { Case, Check, Value } from "./check.ts";
import { compare, type OutputResult } from "./compare.ts";
import type { Subject } from "./subject.ts";

export interface CaseResult {
  readonly in: Case["in"];
  readonly note?: string;
  readonly outputs: readonly OutputResult[];
  /** What was said when the input was refused; every output then fails. */
  readonly refused?: string;
  readonly pass: boolean;
}

/** The largest deviation of one output over all cases, relative and in its own unit. */
export interface Worst {
  readonly relative: number;
  readonly difference: number;
}

export interface CheckResult {
  readonly check: Check;
  readonly cases: readonly CaseResult[];
  /** The ids of the relations that the check used, recorded while it ran. */
  readonly relations: readonly string[];
  readonly worst: Readonly<Record<string, Worst>>;
  readonly steps: readonly Step[];
  readonly pass: boolean;
}

function answers(
  subject: Subject,
  given: Case["in"],
  trace: Recording,
): { computed: Readonly<Record<string, Value>>; refused?: string } {
  try {
    return { computed: subject.compute(given, trace) };
  } catch (error) {
    if (error instanceof DomainError) return { computed: {}, refused: `${error.field}: ${error.message}` };
    throw error;
  }
}

function runCase(check: Check, subject: Subject, one: Case, trace: Recording): CaseResult {
  const { computed, refused } = answers(subject, one.in, trace);
  const outputs = Object.entries(one.out).map(([output, expected]) => {
    const ours: Value | undefined = computed[output];
    const result = compare(check, output, expected, ours ?? null);
    return ours === undefined ? { ...result, pass: false } : result;
  });
  return {
    in: one.in,
    ...(one.note !== undefined && { note: one.note }),
    outputs,
    ...(refused !== undefined && { refused }),
    pass: outputs.every(({ pass }) => pass),
  };
}

function worst(cases: readonly CaseResult[]): Record<string, Worst> {
  const found: Record<string, Worst> = {};
  for (const { output, deviation, difference } of cases.flatMap(({ outputs }) => outputs)) {
    if (difference === null) continue;
    const before = found[output] ?? { relative: 0, difference: 0 };
    found[output] = {
      relative: Math.max(before.relative, Math.abs(deviation ?? 0)),
      difference: Math.max(before.difference, Math.abs(difference)),
    };
  }
  return found;
}

/** Runs every case of a check through its subject and records which relations it used. */
export function runCheck(check: Check, subject: Subject): CheckResult {
  const trace = recording();
  const cases = check.cases.map((one) => runCase(check, subject, one, trace));
  return {
    check,
    cases,
    relations: [...new Set(trace.steps.map((step) => step.relation))].sort(),
    worst: worst(cases),
    steps: trace.steps,
    pass: cases.every(({ pass }) => pass),
  };
}
