import type { SI } from "../quantity/domain-error.ts";
import { type Kind, kinds } from "../quantity/kinds.ts";
import { fromSI } from "../quantity/units.ts";
import type { AnyRelation } from "./relation.ts";

type Working = AnyRelation["working"];

/** The unit in which the working of a relation shows a number of this kind. */
export const workingUnit = (kind: Kind, working: Working): string => kinds[kind][working ?? "kilo"];

/** An SI value as the working of a relation shows it. `workingNumber(101325, "pressure", "kilo")` is 101.325. */
export const workingNumber = (value: SI, kind: Kind, working: Working): number =>
  fromSI(value, workingUnit(kind, working));
