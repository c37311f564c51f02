import type { AnyRelation } from "../../../calc/relation/relation.ts";
import { relationTex, symbolTex } from "./relation-tex.ts";
import { renderTex, type Slot } from "./render-tex.ts";

/** A relation as HTML: once with its symbols, once with places for numbers. */
export interface TypesetRelation {
  readonly symbols: string;
  /**
   * Every input has elements with `data-slot="<its key>"`, the result with `data-slot="="`; `data-at` is the position
   * that decides about brackets. The places are empty until `fillSlots` or `fillSlotsHtml` writes to them.
   */
  readonly numbers: string;
}

/** One symbol, to stand in a line of text. */
export const typesetSymbol = (key: string): string => renderTex(symbolTex(key));

/**
 * A relation's formula as HTML. A formula breaks across lines after a relation sign, and after a plus, minus or times
 * that stands in no fraction, root or bracket; a wider part than the line has to be split in the declaration.
 *
 * Throws at an expression that cannot be parsed or printed, and at an unknown name in it, naming the relation.
 */
export function typesetRelation(relation: AnyRelation): TypesetRelation {
  try {
    const { symbols, numbers } = relationTex(relation);
    const lines = numbers.map(({ part: name, tex, slots }) =>
      name ? part(name, line(tex, slots)) : line(tex, slots),
    );
    return { symbols: line(symbols), numbers: lines.join(" ") };
  } catch (error) {
    throw new Error(`${relation.id}: ${(error as Error).message}`, { cause: error });
  }
}

// Inline, because KaTeX lets only inline formulas break; with fractions at their full size.
const line = (tex: string, slots: readonly Slot[] = []) => renderTex(`\\displaystyle ${tex}`, { slots });

const part = (name: string, html: string) =>
  `<span class="part"><span class="part-name">${name}</span> ${html}</span>`;
