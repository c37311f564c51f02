import { type Amount, amountOf, nameOf, plainNumber } from "./amount.ts";
import { dimensionOf, isSame } from "./dimension.ts";
import type { SI } from "./domain-error.ts";
import { isPlain, readExpression } from "./expression.ts";
import type { Kind } from "./kinds.ts";
import { Refusal } from "./refusal.ts";
import {
  type Field,
  mustBeComputable,
  mustBePossible,
  type ReadContext,
  type Single,
  say,
  single,
} from "./single-quantity.ts";
import { fromSI, toSI, unitOf } from "./units.ts";
import { writePlain } from "./write.ts";

/** Something to calculate with, and beside it an operator or a bracket. */
export const isCalculation = (text: string): boolean =>
  /[\dπ]|\bpi\b/iu.test(text) && /[-+−–*×·⋅∙/÷^()²³⁻π]|\bpi\b|(?!0x)\d\s*x\s*\d/iu.test(text);

const roles: Partial<Record<Kind, readonly Amount["role"][]>> = {
  temperature: ["free", "point"],
  temperatureDifference: ["free", "difference"],
  pressure: ["free", "point"],
  pressureDifference: ["free", "difference"],
};

/** The value of a calculation with units, as a field of `kind` takes it. */
function valueAs(kind: Kind, amount: Amount, fieldUnit: string, context: ReadContext): SI {
  const { dimension, role, value } = amount;
  if (!isSame(dimension, dimensionOf(kind)) || roles[kind]?.includes(role) === false)
    throw new Refusal(`This comes out as ${nameOf(amount)}.`);
  if (kind === "pressure" && role === "free" && unitOf(fieldUnit).gauge)
    return value + toSI(0, "Pa-g", context);
  if (kind === "gaugePressure" && role === "point") return value - toSI(0, "Pa-g", context);
  return value;
}

/**
 * A typed calculation, as its field takes it. A plain calculation with one unit behind it
 * is that many of the unit; anything else comes out in the field's own. Throws a Refusal where it makes no sense.
 */
export function calculated(field: Field): Single {
  const { kind, fieldUnit, context, text } = field;
  const tree = readExpression(text);
  const plain = tree.is === "unit" ? tree.of : tree;
  if (isPlain(plain)) return single(plainNumber(plain), tree.is === "unit" ? tree.typed : "", field);
  const value = valueAs(kind, amountOf(tree, kind, context), fieldUnit, context);
  mustBeComputable(value, text);
  const unit = unitOf(fieldUnit);
  const number = fromSI(value, fieldUnit, context);
  const plainShown = say(writePlain(number), unit);
  const counts = kind === "gaugePressure" ? " gauge" : kind === "pressure" && !unit.gauge ? " absolute" : "";
  const shown = `${plainShown}${counts}`;
  mustBePossible(kind, value, shown, unit, context);
  return { value, number, unit, shown };
}
