import type { AnyRelation } from "../../calc/relation/relation.ts";

const files = import.meta.glob<Readonly<Record<string, unknown>>>("/calc/**/*.ts", { eager: true });

const isRelation = (x: unknown): x is AnyRelation =>
  typeof x === "object" && x !== null && "form" in x && "compute" in x;

/** Every relation that a file of calc/ exports, by id. */
export const relations: ReadonlyMap<string, AnyRelation> = new Map(
  Object.values(files)
    .flatMap((file) => Object.values(file).filter(isRelation))
    .map((relation) => [relation.id, relation]),
);

/** The relation with this id. Throws where calc/ exports none. */
export function relation(id: string): AnyRelation {
  const found = relations.get(id);
  if (!found) throw new Error(`no file of calc/ exports a relation "${id}"`);
  return found;
}
