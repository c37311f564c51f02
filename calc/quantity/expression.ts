import { readOperand, readRaised } from "./number-text.ts";
import { Refusal } from "./refusal.ts";
import { quote } from "./repeated.ts";
import { type Named, unitsNamed } from "./unit-names.ts";

export type Operation = "+" | "-" | "*" | "/" | "^";

/** A typed calculation. A unit belongs to all that stands under it, which is a plain number. */
export type Tree =
  | { readonly is: "number"; readonly number: number }
  | { readonly is: "unit"; readonly typed: string; readonly named: Named; readonly of: Tree }
  | { readonly is: "negative"; readonly of: Tree }
  | { readonly is: Operation; readonly left: Tree; readonly right: Tree };

export const isPlain = (tree: Tree): boolean => {
  if (tree.is === "number") return true;
  if (tree.is === "unit") return false;
  return tree.is === "negative" ? isPlain(tree.of) : isPlain(tree.left) && isPlain(tree.right);
};

const deepest = 20;

const unitWord = "[\\p{L}°º˚℃℉%\"'][\\p{L}\\d°º˚²³₂^.]*(?:(?<=\\^)[-−]?\\d)?";
const unitRun = new RegExp(
  `^${unitWord}(?:\\)|\\s*[/·⋅∙*-]\\s*\\(?\\s*${unitWord}|\\s*\\(\\s*${unitWord}|\\s+${unitWord})*`,
  "u",
);
const unitWords = new RegExp(`${unitWord}|\\)`, "gu");

const isBalanced = (text: string): boolean => text.split("(").length === text.split(")").length;

/** The unit that a text begins with, by the longest name that is one: a bracket behind it may belong to the calculation. */
export function leadingUnit(text: string): { readonly typed: string; readonly named: Named } | undefined {
  const [run = ""] = unitRun.exec(text) ?? [];
  const ends = Array.from(run.matchAll(unitWords), ({ index, 0: part }) => index + part.length);
  for (const end of ends.reverse()) {
    const typed = text.slice(0, end);
    const named = unitsNamed(typed);
    if (named.candidates.length && isBalanced(typed)) return { typed, named };
  }
  return undefined;
}

/** How a calculation is typed: `2*(3 bar + 4 psi)`, `3/8 in`, `1 1/2 in`, `(185-32)*5/9 degC`, `pi/4*(60 mm)²`. */
class Reader {
  private rest: string;
  private depth = 0;

  constructor(text: string) {
    this.rest = text.trim();
  }

  whole(): Tree {
    const tree = this.sum();
    if (this.rest) throw this.junk();
    return tree;
  }

  private eat(pattern: RegExp): string | undefined {
    const [found] = pattern.exec(this.rest) ?? [];
    if (found === undefined) return undefined;
    this.rest = this.rest.slice(found.length).trimStart();
    return found.trim();
  }

  private junk(): Refusal {
    if (this.rest.startsWith(")")) return new Refusal("A bracket is closed that was not opened.");
    const [word] = /^[\p{L}°%]+/u.exec(this.rest) ?? [];
    return new Refusal(
      word === undefined
        ? `A sign such as + or × is missing before ${quote(this.rest)}.`
        : `${quote(word)} is not a unit known here.`,
    );
  }

  private sum(): Tree {
    let tree = this.term();
    for (let sign = this.eat(/^[-+−–]/); sign !== undefined; sign = this.eat(/^[-+−–]/))
      tree = { is: sign === "+" ? "+" : "-", left: tree, right: this.term() };
    return tree;
  }

  private term(): Tree {
    let tree = this.factor();
    tree = this.withUnit(tree) ?? tree;
    const sign = /^(?:[*×·⋅∙/÷]|x(?=\s*[\d.,(π]))/i;
    for (let typed = this.eat(sign); typed !== undefined; typed = this.eat(sign)) {
      const is = typed === "/" || typed === "÷" ? "/" : "*";
      const isBracketed = this.rest.startsWith("(");
      const right = this.factor();
      const so: Tree = { is, left: tree, right };
      // Three eighths of an inch are 3/8 in; but of 2 × 20 °C the unit belongs to the 20.
      const isWhole = isPlain(so) && (is === "/" || isBracketed);
      const whole = isWhole ? this.withUnit(so) : undefined;
      tree = whole ?? { is, left: tree, right: this.withUnit(right) ?? right };
    }
    return tree;
  }

  private withUnit(of: Tree): Tree | undefined {
    const unit = leadingUnit(this.rest);
    if (!unit || /^x\s*[\d.,(π]/i.test(this.rest)) return undefined;
    if (!isPlain(of)) throw new Refusal(`${quote(unit.typed)} stands behind what has a unit already.`);
    this.rest = this.rest.slice(unit.typed.length).trimStart();
    return { is: "unit", of, ...unit };
  }

  private factor(): Tree {
    const sign = this.eat(/^[-+−–]/);
    if (sign === undefined || sign === "+") return this.power();
    return { is: "negative", of: this.power() };
  }

  private power(): Tree {
    const left = this.primary();
    const raised = readRaised(this.rest);
    if (raised) {
      this.rest = raised.rest;
      return { is: "^", left, right: { is: "number", number: raised.exponent } };
    }
    return this.eat(/^\^/) === undefined ? left : { is: "^", left, right: this.factor() };
  }

  private primary(): Tree {
    if (this.eat(/^\(/) !== undefined) {
      this.depth += 1;
      if (this.depth > deepest)
        throw new Refusal(`Brackets stand in brackets more than ${deepest} deep. So many are not read.`);
      const tree = this.sum();
      if (this.eat(/^\)/) === undefined)
        throw this.rest ? this.junk() : new Refusal("A bracket is not closed.");
      this.depth -= 1;
      return tree;
    }
    if (this.eat(/^(?:pi(?![\p{L}])|π)/iu) !== undefined) return { is: "number", number: Math.PI };
    const mixed = /^(\d{1,3})\s+(\d{1,2})\s*\/\s*(\d{1,2})(?![\d.,])/.exec(this.rest);
    if (mixed) {
      this.rest = this.rest.slice(mixed[0].length).trimStart();
      const [whole, over, under] = mixed.slice(1).map(Number) as [number, number, number];
      return { is: "number", number: whole + over / under };
    }
    const operand = readOperand(this.rest);
    if (!operand)
      throw new Refusal(
        this.rest
          ? `A number is wanted where ${quote(this.rest)} stands.`
          : "A number is missing at the end.",
      );
    if (operand.trouble) throw new Refusal(`${quote(this.rest)} is ${operand.trouble} to compute with.`);
    this.rest = operand.rest;
    return { is: "number", number: operand.number };
  }
}

/** The calculation that a text is. Throws a Refusal where it is none. The caller bounds the length. */
export const readExpression = (text: string): Tree => new Reader(text).whole();
