import type { AnyRelation } from "../../calc/relation/relation.ts";

const files = import.meta.glob<Readonly<Record<string, unknown>>>("../../calc/**/*.ts", { eager: true });

const isRelation = (x: unknown): x is AnyRelation =>
  typeof x === "object" && x !== null && "form" in x && "compute" in x && "id" in x;

/** Every relation that calc/ exports, by id. */
export const relations: ReadonlyMap<string, AnyRelation> = new Map(
  Object.values(files)
    .flatMap((file) => Object.values(file).filter(isRelation))
    .map((relation) => [relation.id, relation]),
);
