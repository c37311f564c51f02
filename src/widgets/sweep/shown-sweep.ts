import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../../calc/quantity/kinds.ts";
import { fromSI, type UnitContext } from "../../../calc/quantity/units.ts";
import { writeQuantity } from "../../../calc/quantity/write.ts";
import type { Calculator, Field } from "../../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../../calculators/engine/entry.ts";
import { type Given, withLimit } from "../../calculators/engine/evaluate.ts";
import type { Stretch, Swept, SweptCurve } from "../../calculators/engine/sweep.ts";

/** A sweep that was computed, with what it was asked and the state that it was asked at. */
export interface Drawn {
  readonly calculator: Calculator;
  readonly given: Given;
  readonly along: string;
  readonly span: readonly [SI, SI];
  readonly result: string;
  readonly family: string | undefined;
  readonly swept: Swept;
  /** The result at the present state, where it has one. */
  readonly now: SI | undefined;
  readonly around: Surroundings;
}

/** The units in which a sweep is shown. */
export function unitsOf({ calculator, along, result, around }: Drawn) {
  const x = calculator.inputs[along] as Field;
  const y = calculator.results[result] as { label: string; kind: Kind };
  const context: UnitContext = barometerContext(around);
  const xUnit = kinds[x.kind][around.system];
  const yUnit = kinds[y.kind][around.system];
  return {
    x,
    y,
    xUnit,
    yUnit,
    context,
    inX: (si: SI) => fromSI(si, xUnit, context),
    inY: (si: SI) => fromSI(si, yUnit, context),
  };
}

/** What tells a curve from the others: the value of the family's input, or its result. */
export function nameOf(drawn: Drawn, { member, result }: SweptCurve): string {
  const { calculator, family, around, swept } = drawn;
  if (family !== undefined && member !== undefined) {
    const { kind } = calculator.inputs[family] as Field;
    return writeQuantity(member, kinds[kind][around.system], barometerContext(around));
  }
  const several = swept.curves.some((one) => one.result !== result);
  return several ? (calculator.results[result]?.label.toLowerCase() ?? "") : "";
}

const partOf = (calculator: Calculator, about: string): string =>
  calculator.inputs[about]?.label ?? calculator.results[about]?.label ?? about;

/** What is said of a stretch, with where it lies. */
export function sentenceOf(drawn: Drawn, stretch: Stretch): string {
  const { calculator, span, family, around } = drawn;
  const { xUnit, context } = unitsOf(drawn);
  const write = (x: SI) => writeQuantity(x, xUnit, context);
  const [isFromStart, isToEnd] = [stretch.from <= span[0], stretch.to >= span[1]];
  const where =
    isFromStart && isToEnd
      ? "All along"
      : isFromStart
        ? `Up to ${write(stretch.to)}`
        : isToEnd
          ? `From ${write(stretch.from)} on`
          : stretch.from === stretch.to
            ? `At ${write(stretch.from)}`
            : `From ${write(stretch.from)} to ${write(stretch.to)}`;
  const input = family === undefined ? undefined : (calculator.inputs[family] as Field);
  const member =
    input && stretch.member !== undefined
      ? `, with ${input.label.toLowerCase()} ${writeQuantity(stretch.member, kinds[input.kind][around.system], context)}`
      : "";
  const what = stretch.what === "refused" ? " there is no curve" : "";
  const says = withLimit(stretch.says, stretch.limit, around, { digits: 4 });
  return `${where}${member}${what}: ${partOf(calculator, stretch.about)}. ${says}`;
}
