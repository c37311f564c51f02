import { numberTex } from "../../calc/relation/number-tex.ts";
import type { AnyRelation } from "../../calc/relation/relation.ts";
import { relationTex } from "../integrations/typeset/relation-tex.ts";
import { fillSlotsTex, type Slot } from "../integrations/typeset/render-tex.ts";
import type { Formula } from "../widgets/exports/formulas.ts";

const place = ({ key, position, text }: Slot): string =>
  key === undefined ? numberTex(text) : `⟦${key}|${position}⟧`;

/** A relation as texts of a working take it: what `/working/formulas.json` serves. */
export function formulaOf(relation: AnyRelation): Formula {
  const { symbols, numbers } = relationTex(relation);
  const { key, standing } = relation.sources[0];
  return {
    title: relation.title,
    source: key,
    standing,
    symbols,
    numbers: numbers.map(({ part, tex, slots }) => ({
      ...(part && { part }),
      tex: fillSlotsTex(tex, slots, place),
    })),
  };
}
