import { kinds } from "../../calc/quantity/kinds.ts";
import { writeQuantity } from "../../calc/quantity/write.ts";
import type { AnyRelation, Quantity } from "../../calc/relation/relation.ts";
import type { Step } from "../../calc/relation/trace.ts";
import { workingText, workingUnit } from "../../calc/relation/working.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import { fillSlots } from "./slots.ts";

/** “1 step”, “30 steps”. */
export const stepCount = (count: number): string => (count === 1 ? "1 step" : `${count} steps`);

/** The numbers of a step in its relation's working units, by slot; `=` is the result. */
export function slotValues(relation: AnyRelation, step: Step): Record<string, string> {
  const inputs = relation.inputs as Readonly<Record<string, Quantity>>;
  const { working } = relation;
  const values: Record<string, string> = { "=": workingText(step.value, relation.result.kind, working) };
  for (const [name, value] of Object.entries(step.inputs)) {
    const quantity = inputs[name];
    if (quantity) values[name] = workingText(value, quantity.kind, working);
  }
  return values;
}

/** A result once more in the visitor's unit, where the working shows it in another. */
export function alsoShown(relation: AnyRelation, step: Step, around: Surroundings): string {
  const { kind } = relation.result;
  const unit = kinds[kind][around.system];
  if (unit === workingUnit(kind, relation.working)) return "";
  return `that is ${writeQuantity(step.value, unit, barometerContext(around))}`;
}

/** The parts of a step that change with the state. */
function fill(item: Element, step: Step, relation: AnyRelation, around: Surroundings): void {
  const place = item.querySelector(".at");
  if (place) place.textContent = step.where;
  fillSlots(item, slotValues(relation, step));
  const also = item.querySelector(".also");
  if (also) also.textContent = alsoShown(relation, step, around);
}

/**
 * Brings the working under a calculator up to date.
 *
 * Each relation was typeset once, at build. Its steps are clones of that template with other numbers in the slots, so a
 * working of another shape costs no typesetting.
 */
export function showWorking(
  list: Element,
  templates: Map<string, Element>,
  steps: readonly Step[],
  relations: readonly AnyRelation[],
  around: Surroundings,
): void {
  const byId = new Map(relations.map((r) => [r.id, r]));
  const standing = [...list.children];
  const isSameShape =
    standing.length === steps.length &&
    standing.every((item, i) => item.getAttribute("data-relation") === steps[i]?.relation);
  if (!isSameShape) {
    list.replaceChildren(
      ...steps.flatMap((step) => {
        const template = templates.get(step.relation);
        return template ? [template.cloneNode(true)] : [];
      }),
    );
  }
  for (const [i, step] of steps.entries()) {
    const item = list.children[i];
    const relation = byId.get(step.relation);
    if (item && relation) fill(item, step, relation, around);
  }
}

/** The templates that the build left under a calculator: those in use as steps, and the others in a <template>. */
export function readTemplates(details: Element): Map<string, Element> {
  const spare = details.querySelector("template")?.content.querySelectorAll("[data-relation]") ?? [];
  const used = details.querySelectorAll("ol > [data-relation]");
  return new Map(
    [...spare, ...used].map((item) => [
      item.getAttribute("data-relation") ?? "",
      item.cloneNode(true) as Element,
    ]),
  );
}
