import { writeNumber } from "../../calc/quantity/write.ts";

const bracketsMinus = new Set(["term", "factor", "base"]);

/**
 * A number as it stands in a formula. `at` is the position that the slot was typeset for: a negative number gets
 * brackets after a sign and as a factor, and so does a power of ten where a power is taken or a slash stands before it.
 * `slotText(-0.5, "term")` is "(−0.5)".
 */
export function slotText(value: number, at: string, digits?: number): string {
  const text = writeNumber(value, digits);
  const brackets = (value < 0 && bracketsMinus.has(at)) || (at === "base" && text.includes("×"));
  return brackets ? `(${text})` : text;
}

type Values = Readonly<Record<string, number>>;

/** Writes numbers in working units to all slots below `root`, by their keys. Slots without a value stay as they are. */
export function fillSlots(root: ParentNode, values: Values, digits?: number): void {
  for (const element of root.querySelectorAll("[data-slot]")) {
    const value = values[element.getAttribute("data-slot") ?? ""];
    if (value === undefined) continue;
    element.textContent = slotText(value, element.getAttribute("data-at") ?? "", digits);
  }
}

const slot = /(<[^>]* data-slot="([^"]*)" data-at="([^"]*)"[^>]*>)[^<]*/g;

/** `fillSlots` on HTML that stands in no document yet. */
export const fillSlotsHtml = (html: string, values: Values, digits?: number): string =>
  html.replace(slot, (old: string, tag: string, key: string, at: string) => {
    const value = values[key];
    return value === undefined ? old : tag + slotText(value, at, digits);
  });
