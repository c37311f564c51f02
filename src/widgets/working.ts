import { kinds } from "../../calc/quantity/kinds.ts";
import { writeQuantity } from "../../calc/quantity/write.ts";
import type { AnyRelation, Quantity } from "../../calc/relation/relation.ts";
import type { Step } from "../../calc/relation/trace.ts";
import { workingText, workingUnit } from "../../calc/relation/working.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import { atRoot } from "./at-root.ts";
import { bringStyles } from "./bring-styles.ts";
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
  templates: ReadonlyMap<string, Element>,
  steps: readonly Step[],
  relations: ReadonlyMap<string, AnyRelation>,
  around: Surroundings,
): void {
  const standing = [...list.children];
  const isSameShape =
    standing.length === steps.length &&
    standing.every((item, i) => item.getAttribute("data-relation") === steps[i]?.relation);
  if (!isSameShape) {
    list.replaceChildren(
      ...steps.map((step) => templates.get(step.relation)?.cloneNode(true) ?? withoutFormula()),
    );
  }
  for (const [i, step] of steps.entries()) {
    const item = list.children[i];
    const relation = relations.get(step.relation);
    if (item && relation) fill(item, step, relation, around);
  }
}

/** A step whose formula could not be fetched still says where it stands and what comes out. */
function withoutFormula(): Element {
  const item = document.createElement("li");
  item.className = "step";
  item.innerHTML =
    '<p class="at"></p><p>The formula of this step could not be fetched. Its result is <span data-slot="="></span> <span class="also"></span></p>';
  return item;
}

/** The templates that the build left under a calculator: its steps at the example values. */
export const readTemplates = (details: Element): Map<string, Element> =>
  new Map(
    Array.from(details.querySelectorAll("ol > [data-relation]"), (item) => [
      item.getAttribute("data-relation") ?? "",
      item.cloneNode(true) as Element,
    ]),
  );

/** The topic of a relation: its folder in calc/, by which templates are fetched. */
export const topicOf = (relation: string): string => relation.slice(0, relation.lastIndexOf("/"));

/** Fetches the templates that these steps need and the page lacks; one that does not come is left out. */
export async function fetchTemplates(templates: Map<string, Element>, steps: readonly Step[]): Promise<void> {
  const missing = new Set(steps.map((step) => step.relation).filter((id) => !templates.has(id)));
  await Promise.all(
    [...new Set([...missing].map(topicOf))].map(async (topic) => {
      const answer = await fetch(atRoot(`/working/${topic}/`)).catch(() => null);
      if (!answer?.ok) return;
      const fragment = new DOMParser().parseFromString(await answer.text(), "text/html");
      await bringStyles(fragment);
      for (const item of fragment.querySelectorAll("[data-relation]")) {
        const id = item.getAttribute("data-relation") ?? "";
        if (missing.has(id)) templates.set(id, item);
      }
    }),
  );
}
