import { slotText } from "../../calc/relation/slot-text.ts";

/** Written numbers by the keys of their slots. */
type Texts = Readonly<Record<string, string>>;

/** Writes numbers to all slots below `root`, by their keys. Slots without a number stay as they are. */
export function fillSlots(root: ParentNode, texts: Texts): void {
  for (const element of root.querySelectorAll("[data-slot]")) {
    const text = texts[element.getAttribute("data-slot") ?? ""];
    if (text !== undefined) element.textContent = slotText(text, element.getAttribute("data-at") ?? "");
  }
}

const slot = /(<[^>]* data-slot="([^"]*)" data-at="([^"]*)"[^>]*>)[^<]*/g;

/** `fillSlots` on HTML that stands in no document yet. */
export const fillSlotsHtml = (html: string, texts: Texts): string =>
  html.replace(slot, (old: string, tag: string, key: string, at: string) => {
    const text = texts[key];
    return text === undefined ? old : tag + slotText(text, at);
  });
