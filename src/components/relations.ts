import type { AnyRelation } from "../../calc/relation/relation.ts";
import { relations } from "../checks/relations.ts";

export { relations };

/** The relation with this id. Throws where calc/ exports none. */
export function relation(id: string): AnyRelation {
  const found = relations.get(id);
  if (!found) throw new Error(`no file of calc/ exports a relation "${id}"`);
  return found;
}
