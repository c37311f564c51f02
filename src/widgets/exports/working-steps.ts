import { kinds } from "../../../calc/quantity/kinds.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import { writeIn } from "../../../calc/quantity/write.ts";
import { numberTex } from "../../../calc/relation/number-tex.ts";
import { slotText } from "../../../calc/relation/slot-text.ts";
import { workingUnit } from "../../../calc/relation/working.ts";
import { barometerContext, type Surroundings } from "../../calculators/engine/entry.ts";
import type { Success } from "../../calculators/engine/evaluate.ts";
import { slotValues } from "../working.ts";
import type { Formulas } from "./formulas.ts";

/** One step of a working, ready to be written in any form. Formulas are TeX. */
export interface WorkingStep {
  readonly where: string;
  readonly title: string;
  readonly symbols: string;
  readonly numbers: readonly { readonly part?: string; readonly tex: string }[];
  /** The result once more in the visitor's unit, where the working is in another. */
  readonly also: string | undefined;
  readonly source: string;
  readonly standing: string;
}

/** The steps behind an outcome. Throws where a formula is not among those fetched. */
export function workingSteps(
  { steps, relations }: Success,
  formulas: Formulas,
  around: Surroundings,
): readonly WorkingStep[] {
  return steps.map((step) => {
    const relation = relations.get(step.relation);
    const formula = Object.hasOwn(formulas, step.relation) ? formulas[step.relation] : undefined;
    if (!relation || !formula) throw new Error(`no formula of ${step.relation}`);
    const values = slotValues(relation, step);
    const filled = (tex: string) =>
      tex.replace(/⟦([^|]*)\|([^⟧]*)⟧/g, (_, key: string, at: string) =>
        numberTex(slotText(values[key] ?? "", at)),
      );
    const { kind } = relation.result;
    const unit = kinds[kind][around.system];
    const { tex: unitTex } = unitOf(unit);
    return {
      where: step.where,
      title: formula.title,
      symbols: formula.symbols,
      numbers: formula.numbers.map((line) => ({ ...line, tex: filled(line.tex) })),
      also:
        unit === workingUnit(kind, relation.working)
          ? undefined
          : `${numberTex(writeIn(step.value, unit, barometerContext(around)))}\\;${unitTex}`,
      source: formula.source,
      standing: formula.standing,
    };
  });
}
