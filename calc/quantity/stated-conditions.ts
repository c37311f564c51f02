import type { SI } from "./domain-error.ts";
import { leadingUnit } from "./expression.ts";
import type { Kind } from "./kinds.ts";
import { readLeadingNumber } from "./number-text.ts";
import { Refusal } from "./refusal.ts";
import { quote } from "./repeated.ts";
import { type Field, type Single, say, single } from "./single-quantity.ts";
import { isPressure, unitsNamed } from "./unit-names.ts";
import { fromSI, unitOf } from "./units.ts";
import { writePlain } from "./write.ts";

const flowAt = /^(.*\S)\s*(?:\sat\s|@)\s*(\S.*)$/isu;

/** Whether a text is a flow at stated conditions: `1,200 cfm at 60 °F 14.7 psi`. */
export const isStated = (text: string): boolean => flowAt.test(text);

const form =
  "Type such a flow as 1200 cfm at 60 °F 14.7 psi, with its temperature and its absolute pressure.";

/** A number with its unit at the start of a text, and what stands behind it. */
function leadingQuantity(text: string): { number: number; name: string; rest: string } {
  const leading = readLeadingNumber(text);
  const unit = leading && leadingUnit(leading.rest);
  if (!leading || leading.trouble || !unit)
    throw new Refusal(`${quote(text)} is no quantity with a unit. ${form}`, "whole");
  const rest = leading.rest.slice(unit.typed.length).replace(/^\s*(?:and\b|,|;)?\s*/i, "");
  return { number: leading.number, name: unit.typed, rest };
}

/** The mass of dry air in a volume flow that names the temperature and the pressure it is stated at. Throws a Refusal. */
export function statedMassFlow({ kind, fieldUnit, context, text }: Field): Single {
  const { massOfFlow } = context;
  if (kind !== "massFlow" || !massOfFlow)
    throw new Refusal("Only a mass flow can be typed as a volume flow at stated conditions.");
  const [, flowText = "", conditions = ""] = flowAt.exec(text) ?? [];
  const flow = leadingQuantity(flowText);
  const first = leadingQuantity(conditions);
  const second = leadingQuantity(first.rest);
  if (flow.rest || second.rest)
    throw new Refusal(`${quote(flow.rest || second.rest)} is too much here. ${form}`, "whole");
  const take = (from: typeof flow, wanted: Kind, unit: string): Single => {
    try {
      return single(from.number, from.name, { kind: wanted, fieldUnit: unit, context, text });
    } catch (error) {
      const isPart = error instanceof Refusal && !error.isWhole;
      throw isPart ? new Refusal(`${error.message} ${form}`, "whole") : error;
    }
  };
  const isPressureFirst = unitsNamed(first.name).candidates.some(isPressure);
  const [warm, pressed] = isPressureFirst ? [second, first] : [first, second];
  const T = take(warm, "temperature", "degC");
  const p = take(pressed, "pressure", "kPa");
  const V = take(flow, "volumeFlow", "m3/s");
  const value: SI = massOfFlow(V.value, T.value, p.value);
  const unit = unitOf(fieldUnit);
  const number = fromSI(value, fieldUnit);
  const shown = `${say(writePlain(number), unit)} of dry air, ${V.shown} at ${T.shown} and ${p.shown}`;
  return { value, number, unit, shown };
}
