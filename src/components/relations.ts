import type { AnyRelation } from "../../calc/relation/relation.ts";
import { relations } from "../checks/relations.ts";

export { relations };

/** The relation with this id. Throws where calc/ exports none. */
export function relation(id: string): AnyRelation {
  const found = relations.get(id);
  if (!found) throw new Error(`no file of calc/ exports a relation "${id}"`);
  return found;
}

const byName = new Map(
  [...relations.values()].flatMap((one) =>
    "name" in one && one.name !== undefined ? [[one.name, one] as const] : [],
  ),
);

const formulaOf = (one: AnyRelation): string =>
  one.form === "explicit" ? one.expression : one.form === "implicit" ? one.residual : "";

/** The relations that a formula calls by name, and those that they call in turn, each once, in the order of reading. */
export function calledBy(one: AnyRelation, seen = new Set([one])): readonly AnyRelation[] {
  const direct = Array.from(formulaOf(one).matchAll(/\b([A-Za-z]\w*)\s*\(/g), ([, name = ""]) =>
    byName.get(name),
  );
  for (const callee of direct) {
    if (!callee || seen.has(callee)) continue;
    seen.add(callee);
    calledBy(callee, seen);
  }
  return [...seen].filter((other) => other !== one);
}
