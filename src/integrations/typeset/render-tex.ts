import katex from "katex";

/** A place in a formula whose text is set later, without typesetting again. */
export interface Slot {
  /** The key that finds the place; without one the text is final. */
  readonly key?: string;
  readonly position: string;
  readonly text: string;
}

export interface TexOptions {
  readonly display?: boolean;
  readonly slots?: readonly Slot[];
}

/** Digits that KaTeX lays out like any number, and that no formula of ours contains. */
const sentinel = "80080";

/** Letters in a style whose font the site does not carry: bold, blackboard, script and the like. */
const uncarried = /class="(?:[^"]* )?(?:math(?!normal|rm)[a-z]+|text(?!rm)[a-z]+|boldsymbol|amsrm)[ "]/;

/** TeX that holds the place of the slot with this index. */
export const slotTex = (index: number): string => `\\text{${sentinel}${String(index).padStart(2, "0")}}`;

/** TeX with its slots written as `place` says, to be typeset elsewhere. */
export const fillSlotsTex = (tex: string, slots: readonly Slot[], place: (slot: Slot) => string): string =>
  tex.replace(new RegExp(`\\\\text\\{${sentinel}(\\d\\d)\\}`, "g"), (_, index: string) => {
    const slot = slots[Number(index)];
    if (!slot) throw new Error(`no slot ${index} in ${tex}`);
    return place(slot);
  });

export const escapeHtml = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

/**
 * HTML and MathML of a formula. Throws at TeX that KaTeX does not accept without remark, and at letters in a style that
 * the site has no font for.
 *
 * Slots are elements with `data-slot` and `data-at` in both halves, so that sighted readers and screen readers get the
 * same number. KaTeX's own attributes would reach the visual half only, and it would join neighbouring numbers in the
 * other, so each slot is set as a text of sentinel digits and found again in the output.
 */
export function renderTex(tex: string, { display = false, slots = [] }: TexOptions = {}): string {
  const slot = (index: string): readonly [attributes: string, text: string] => {
    const found = slots[Number(index)];
    if (!found) throw new Error(`no slot ${index} in ${tex}`);
    const key = found.key === undefined ? "" : ` data-slot="${found.key}" data-at="${found.position}"`;
    return [key, escapeHtml(found.text)];
  };
  const html = katex
    .renderToString(tex, {
      displayMode: display,
      output: "htmlAndMathml",
      throwOnError: true,
      strict: "error",
    })
    .replace(/<annotation[\s\S]*?<\/annotation>/g, "")
    .replace(new RegExp(`<mtext>${sentinel}(\\d\\d)</mtext>`, "g"), (_, index: string) => {
      const [attributes, text] = slot(index);
      return `<mn${attributes}>${text}</mn>`;
    })
    .replace(
      new RegExp(`<span class="(mord[^"]*)">${sentinel}(\\d\\d)</span>`, "g"),
      (_, classes: string, index: string) => {
        const [attributes, text] = slot(index);
        return `<span class="${classes}"${attributes}>${text}</span>`;
      },
    );
  // KaTeX joins a slot with a text or a space `~` beside it.
  if (html.includes(sentinel)) throw new Error(`a slot got lost in ${tex}`);
  const style = uncarried.exec(html);
  if (style) throw new Error(`the site carries no font for ${style[0]} in ${tex}: see katex-fonts.ts`);
  return html;
}
