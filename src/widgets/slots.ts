import { slotText } from "../../calc/relation/slot-text.ts";

export { slotText };

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
