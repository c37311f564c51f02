import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fieldEffectiveness } from "../../../../calc/exchanger/field/field-effectiveness.ts";
import type { Layout } from "../../../../calc/exchanger/layout.ts";
import { layouts } from "../../../../calc/exchanger/layouts.ts";
import type { Relation } from "../../../../calc/relation/relation.ts";

const numRuns = Number(process.env["FAST_CHECK_RUNS"] ?? 40);

const files = import.meta.glob<Readonly<Record<string, unknown>>>(
  "../../../../calc/exchanger/effectiveness/*.ts",
  { eager: true },
);

const isRelation = (x: unknown): x is Relation<"NTU" | "R"> =>
  typeof x === "object" && x !== null && "form" in x && "compute" in x;

const relationOf = (id: string): Relation<"NTU" | "R"> | undefined =>
  Object.values(files[`../../../../calc/exchanger/effectiveness/${id}.ts`] ?? {}).find(isRelation);

const across = Object.entries(layouts as Readonly<Record<string, Layout>>)
  .filter(([, { kind }]) => kind !== "shell")
  .map(([id, layout]) => ({ id, layout, relation: relationOf(id) }));

const withRelation = across.flatMap(({ id, layout, relation }) =>
  relation ? [{ id, layout, relation }] : [],
);

/** One grid more than usual, so that the field stays well ahead of what is asked here. */
const field = (layout: Layout, NTU: number, R: number) =>
  fieldEffectiveness(layout, NTU, R, 12 + Math.ceil(Math.max(1, R) * NTU), 5);

describe("every layout that is no shell has a relation", () => {
  it.each(across)("$id", ({ relation }) => expect(relation).toBeDefined());
});

describe("each relation agrees with the field of both streams, computed cell by cell", () => {
  it.each(withRelation)("$id, on a grid of NTU and R", ({ layout, relation }) => {
    for (const NTU of [0, 0.05, 0.3, 1, 2.5, 5, 8])
      for (const R of [0, 0.05, 0.3, 0.75, 1, 1.5, 4]) {
        const off = relation.compute({ NTU, R }) - field(layout, NTU, R);
        expect(Math.abs(off), `NTU ${NTU}, R ${R}`).toBeLessThan(1e-10);
      }
  });

  it.each(withRelation)("$id, anywhere", ({ layout, relation }) => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 8, noNaN: true }),
        fc.double({ min: 1e-6, max: 4, noNaN: true }),
        (NTU, R) => Math.abs(relation.compute({ NTU, R }) - field(layout, NTU, R)) < 1e-10,
      ),
      { numRuns },
    );
  });
});
