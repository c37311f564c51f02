import type { SI } from "../quantity/domain-error.ts";
import { type Kind, kinds } from "../quantity/kinds.ts";
import { fromSI } from "../quantity/units.ts";
import { trimZeros, writeNumber } from "../quantity/write.ts";
import type { AnyRelation } from "./relation.ts";

type Working = AnyRelation["working"];

/** The unit in which the working of a relation shows a number of this kind. */
export const workingUnit = (kind: Kind, working: Working): string => kinds[kind][working ?? "kilo"];

/** An SI value as the working of a relation shows it. `workingNumber(101325, "pressure", "kilo")` is 101.325. */
export const workingNumber = (value: SI, kind: Kind, working: Working): number =>
  fromSI(value, workingUnit(kind, working));

/**
 * That number written: to four figures, a temperature to five since its differences count, and a number that is exact
 * in fewer without zeros. `workingText(298.15, "temperature", "kilo")` is `298.15`, and 0.74 is `0.74`.
 */
export function workingText(value: SI, kind: Kind, working: Working): string {
  const x = workingNumber(value, kind, working);
  const digits = kind === "temperature" ? 5 : 4;
  const isExact = Math.abs(Number(x.toPrecision(digits)) - x) <= 1e-12 * Math.abs(x);
  return isExact ? trimZeros(writeNumber(x, digits)) : writeNumber(x, digits);
}
