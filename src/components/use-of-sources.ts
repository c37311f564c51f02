import type { Standing } from "../../calc/relation/relation.ts";
import { runChecks } from "../checks/run-checks.ts";
import { lessonsInOrder } from "./contents.ts";
import { relations } from "./relations.ts";

/** One place that leans on a source. */
export interface UseOfSource {
  readonly kind: "relation" | "check" | "lesson";
  readonly title: string;
  readonly href?: string;
  readonly where?: string | undefined;
  readonly standing?: Standing | undefined;
}

/** Who uses each source: its key of calc/sources.bib with the relations, checks and lessons that name it. */
export async function useOfSources(): Promise<ReadonlyMap<string, readonly UseOfSource[]>> {
  const uses: (UseOfSource & { readonly key: string })[] = [];
  for (const { title, sources } of relations.values())
    for (const source of sources) uses.push({ ...source, kind: "relation", title });
  for (const { check } of runChecks())
    uses.push({ ...check.source, kind: "check", title: check.title, href: `/checks/#check-${check.id}` });
  for (const { id, data } of await lessonsInOrder())
    for (const source of data.sources)
      uses.push({
        ...source,
        kind: "lesson",
        title: `${data.number} ${data.title}`,
        href: `/lessons/${id}/`,
      });
  return Map.groupBy(uses, ({ key }) => key);
}
