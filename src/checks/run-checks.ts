import type { AnyRelation } from "../../calc/relation/relation.ts";
import { type Check, readCheck } from "./check.ts";
import { relations } from "./relations.ts";
import { type CheckResult, runCheck } from "./run-check.ts";
import { type Subject, subject } from "./subject.ts";

export type { OutputResult } from "./compare.ts";
export type { CaseResult, CheckResult, Worst } from "./run-check.ts";

const files = import.meta.glob<unknown>("../../content/checks/*.json", { eager: true, import: "default" });
const subjects = import.meta.glob<Subject>("./subjects/*.ts", { eager: true, import: "default" });
/** A relation as a subject: the case's inputs are the relation's, the output is `value`. */
function alone(relation: AnyRelation): Subject {
  const names = Object.keys(relation.inputs);
  return subject<Record<string, number>>((given, trace) => {
    const odd = [
      ...names.filter((name) => typeof given[name] !== "number"),
      ...Object.keys(given).filter((name) => !names.includes(name)),
    ];
    if (odd.length > 0)
      throw new Error(
        `a case of ${relation.id} needs numbers for ${names.join(", ")}; look at ${odd.join(", ")}`,
      );
    return { value: trace.use(relation, given, "a check") };
  });
}

function subjectOf(check: Check): Subject {
  if (check.subject !== undefined) {
    const found = subjects[`./subjects/${check.subject}.ts`];
    if (found) return found;
    throw new Error(`content/checks/${check.id}.json: there is no src/checks/subjects/${check.subject}.ts`);
  }
  const relation = relations.get(check.relation ?? "");
  if (relation) return alone(relation);
  throw new Error(`content/checks/${check.id}.json: no file of calc/ exports a relation "${check.relation}"`);
}

const idOf = (path: string): string => path.slice(path.lastIndexOf("/") + 1, -".json".length);

let results: readonly CheckResult[] | undefined;

/** Runs every check of content/checks/ in the order of their ids. Runs once, and keeps the results. */
export function runChecks(): readonly CheckResult[] {
  results ??= Object.entries(files)
    .map(([path, file]) => readCheck(idOf(path), file))
    .sort((a, b) => a.id.localeCompare(b.id, "en"))
    .map((check) => runCheck(check, subjectOf(check)));
  return results;
}
