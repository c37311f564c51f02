import { type MathNode, parse, unit } from "mathjs";
import { type Constant, constants } from "../../../calc/constants.ts";
import type { Kind } from "../../../calc/quantity/kinds.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import { writeNumber } from "../../../calc/quantity/write.ts";
import type { AnyRelation, Quantity } from "../../../calc/relation/relation.ts";
import { slotText } from "../../../calc/relation/slot-text.ts";
import { workingUnit } from "../../../calc/relation/working.ts";
import { symbols } from "../../../calc/symbols.ts";
import {
  bracket,
  callOf,
  type Position,
  printExpression,
  sidesOf,
  type Writing,
} from "./print-expression.ts";
import { type Slot, slotTex } from "./render-tex.ts";

/** A formula with places for numbers. `part` says what an implicit relation's line does. */
export interface NumbersTex {
  readonly part?: "wanted" | "found" | "put back";
  readonly tex: string;
  readonly slots: readonly Slot[];
}

/** A relation as TeX: once with its symbols, once with places for numbers, in lines. */
export interface RelationTex {
  readonly symbols: string;
  readonly numbers: readonly NumbersTex[];
}

/** TeX of a symbol of calc/symbols.ts. Throws where there is no such symbol. */
export function symbolTex(key: string): string {
  const symbol = (symbols as Readonly<Record<string, { readonly tex: string }>>)[key];
  if (!symbol) throw new Error(`calc/symbols.ts has no symbol ${JSON.stringify(key)}`);
  return symbol.tex;
}

/** TeX of a relation. Throws at an expression that cannot be parsed or printed, and at an unknown name in it. */
export function relationTex(relation: AnyRelation): RelationTex {
  const result = symbolTex(relation.result.symbol);
  const found = () => numbers(relation, (write) => `${result} = ${write.result}`);
  switch (relation.form) {
    case "explicit": {
      const tree = parse(relation.expression);
      return {
        symbols: `${result} = ${printExpression(tree, symbolic(relation))}`,
        numbers: [
          numbers(relation, (write) => `${result} = ${printExpression(tree, write.known)}`),
          numbers(relation, (write) => `= ${write.result}`),
        ],
      };
    }
    case "implicit": {
      const tree = parse(relation.residual);
      return {
        symbols: equation(tree, symbolic(relation)),
        numbers: [
          { part: "wanted", ...numbers(relation, (write) => equation(tree, write.known)) },
          { part: "found", ...found() },
          { part: "put back", ...numbers(relation, (write) => equation(tree, write.all)) },
        ],
      };
    }
    case "property":
      return {
        symbols: relation.tex,
        numbers: [
          numbers(relation, (write) => {
            const given = Object.keys(relation.inputs).map((name) => write.known.leaf(name, "argument"));
            return `${callOf(result, given)} = ${write.result}`;
          }),
        ],
      };
    case "numerical":
      return { symbols: relation.tex, numbers: [found()] };
  }
}

/** A residual, as the equation that it makes where it is zero. */
function equation(residual: MathNode, writing: Writing): string {
  const sides = sidesOf(residual);
  return sides
    ? sides.map((side) => printExpression(side, writing)).join(" = ")
    : `${printExpression(residual, writing)} = 0`;
}

const quantityOf = (relation: AnyRelation, name: string): Quantity | undefined =>
  (relation.inputs as Readonly<Record<string, Quantity>>)[name] ??
  (relation.form === "implicit" && name === relation.unknown ? relation.result : undefined);

const constantOf = (name: string): Constant | undefined =>
  (constants as Readonly<Record<string, Constant>>)[name];

function symbolic(relation: AnyRelation): Writing {
  return {
    call: symbolTex,
    times: "\\,",
    leaf: (name, position) => {
      if (name === "pi") return "\\pi";
      const key = quantityOf(relation, name)?.symbol ?? constantOf(name)?.symbol;
      if (key === undefined) throw new Error(`${name} is neither an input nor a constant`);
      const tex = symbolTex(key);
      return position === "base" && /[\^']/.test(tex) ? bracket(tex) : tex;
    },
  };
}

interface NumberWriting {
  /** Inputs and constants as numbers, the unknown as its symbol. */
  readonly known: Writing;
  /** The unknown as a number too. */
  readonly all: Writing;
  /** The result with its unit. */
  readonly result: string;
}

/** TeX in which numbers take the place of symbols. */
function numbers(relation: AnyRelation, tex: (write: NumberWriting) => string): NumbersTex {
  const slots: Slot[] = [];
  const slot = (position: Position, text: string, key?: string) =>
    slotTex(slots.push({ position, text, ...(key !== undefined && { key }) }) - 1);
  const unitTex = (kind: Kind) => {
    const { tex } = unitOf(workingUnit(kind, relation.working));
    return tex === "\\mathrm{}" ? "" : `\\;${tex}`;
  };
  const leaf = (unknown: string | undefined) => (name: string, position: Position) => {
    const symbols = symbolic(relation);
    if (name === "pi" || name === unknown) return symbols.leaf(name, position);
    const quantity = quantityOf(relation, name);
    if (quantity) {
      const key = name in relation.inputs ? name : "=";
      return slot(position, "", key) + (position === "argument" ? unitTex(quantity.kind) : "");
    }
    const constant = constantOf(name);
    if (!constant) return symbols.leaf(name, position);
    const value = workingConstant(constant, relation.working);
    return slot(position, slotText(writeNumber(value, figures(value)), position));
  };
  const unknown = relation.form === "implicit" ? relation.unknown : undefined;
  const numbered = tex({
    known: { call: symbolTex, times: "\\times", leaf: leaf(unknown) },
    all: { call: symbolTex, times: "\\times", leaf: leaf(undefined) },
    result: slot("plain", "", "=") + unitTex(relation.result.kind),
  });
  return { tex: numbered, slots };
}

/** A constant is written with all its figures, at most six: it never limits the numbers beside it. */
const figures = (x: number) =>
  Number(x.toPrecision(6))
    .toExponential()
    .replace(/e.*|\D/g, "").length;

/** A constant in working units: kPa, kJ and kW stand for Pa, J and W. */
export function workingConstant(
  constant: Pick<Constant, "value" | "unit">,
  working: AnyRelation["working"],
): number {
  if (working === "si" || constant.unit === "1") return constant.value;
  const kilo = constant.unit.replace(/\b(?:Pa|J|W)\b/g, "k$&");
  return unit(constant.value, constant.unit).toNumber(kilo);
}
