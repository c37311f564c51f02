import {
  type FunctionNode,
  isConstantNode,
  isFunctionNode,
  isOperatorNode,
  isParenthesisNode,
  isSymbolNode,
  type MathNode,
  type OperatorNode,
} from "mathjs";

/**
 * What stands around a part of an expression, and so what may stand there without brackets: anything where it is alone
 * (`plain`, or the whole `argument` of a property function), no sum at the `lead` of a product, no sign in a `term`
 * after a plus or minus or in a later `factor`, and only a single thing as the `base` of a power or after a slash.
 */
export type Position = "plain" | "argument" | "lead" | "term" | "factor" | "base";

/** How a leaf, and a call of a property function, is written. */
export interface Writing {
  leaf(name: string, position: Position): string;
  /** TeX of the function alone: its arguments are printed by the printer. */
  call(name: string): string;
  /** TeX between two factors. */
  times: string;
}

const needs: Record<Position, number> = { plain: 0, argument: 0, lead: 2, term: 3, factor: 3, base: 5 };
const binds = { sum: 1, sign: 2, product: 3, power: 4, single: 5 } as const;

const isTall = (tex: string) => /\\(?:frac|sqrt)/.test(tex);

/** Brackets, which grow only where they must: a line can break inside brackets that do not. */
export const bracket = (tex: string): string => (isTall(tex) ? `\\left(${tex}\\right)` : `(${tex})`);

/** A function and its arguments. Growing brackets would keep away from the name, as a factor does. */
export const callOf = (name: string, args: readonly string[]): string => {
  const given = bracket(args.join(", "));
  return isTall(given) ? `${name}\\mathopen{}${given}\\mathclose{}` : name + given;
};

const operators = ["+", "-", "*", "/", "^"];
const roots: Record<string, string> = { sqrt: "\\sqrt", cbrt: "\\sqrt[3]" };
const named = new Set(["ln", "sin", "cos", "tan", "sinh", "cosh", "tanh", "min", "max"]);

const bare = (node: MathNode): MathNode => (isParenthesisNode(node) ? bare(node.content) : node);

/** Whether two digits would meet if this stood after a number. */
function startsWithNumber(node: MathNode): boolean {
  const part = bare(node);
  if (isConstantNode(part)) return true;
  return isOperatorNode(part) && "*^".includes(part.op) && startsWithNumber(part.args[0] as MathNode);
}

/** The left and right side of a residual `left - right`, which is zero where both are equal. */
export function sidesOf(residual: MathNode): readonly [MathNode, MathNode] | undefined {
  const node = bare(residual);
  if (!isOperatorNode(node) || node.op !== "-" || node.args.length !== 2) return undefined;
  const [left, right] = node.args as [MathNode, MathNode];
  return [left, right];
}

/**
 * TeX of a mathjs tree, with the brackets that its meaning needs and no others.
 *
 * Quotients become fractions, except in an exponent, where a fraction would be too small to read. Throws at an operator
 * or function that it does not know.
 */
export function printExpression(root: MathNode, writing: Writing): string {
  const print = (node: MathNode, position: Position, small: boolean): string => {
    const [tex, strength] = write(bare(node), position, small);
    return strength < needs[position] ? bracket(tex) : tex;
  };
  /** What a part inherits that stands first: its surroundings, unless brackets are put around the whole. */
  const first = (strength: number, position: Position): Position =>
    strength < needs[position] || position === "argument" ? "plain" : position;

  const write = (node: MathNode, position: Position, small: boolean): readonly [string, number] => {
    if (isConstantNode(node)) return number(Number(node.value));
    if (isSymbolNode(node)) return [writing.leaf(node.name, position), binds.single];
    if (isFunctionNode(node)) return call(node as FunctionNode, small);
    if (isOperatorNode(node)) return operation(node as unknown as OperatorNode, position, small);
    throw new Error(`cannot typeset ${node.toString()}`);
  };

  const operation = (node: OperatorNode, position: Position, small: boolean): readonly [string, number] => {
    const { op, args } = node as unknown as { op: string; args: [MathNode, MathNode?] };
    const [a, b] = args;
    if (!operators.includes(op)) throw new Error(`cannot typeset the operator ${op}`);
    if (!b) return [`${op === "-" ? "-" : ""}${print(a, "term", small)}`, binds.sign];
    if (op === "^") return [`${print(a, "base", small)}^{${print(b, "plain", true)}}`, binds.power];
    if (op === "+" || op === "-")
      return [`${print(a, first(binds.sum, position), small)} ${op} ${print(b, "term", small)}`, binds.sum];
    if (op === "/" && !small)
      return [`\\frac{${print(a, "plain", small)}}{${print(b, "plain", small)}}`, binds.power];
    const inherited = first(binds.product, position);
    const left = print(a, inherited === "plain" ? "lead" : inherited, small);
    if (op === "/") return [`${left}/${print(b, "base", small)}`, binds.product];
    const sign = startsWithNumber(b) ? "\\times" : writing.times;
    return [`${left} ${sign} ${print(b, "factor", small)}`, binds.product];
  };

  const call = (node: FunctionNode, small: boolean): readonly [string, number] => {
    const name = node.fn.name;
    const args = (position: Position) => node.args.map((arg) => print(arg, position, small));
    if (name === "exp")
      return [`e^{${node.args.map((arg) => print(arg, "plain", true)).join()}}`, binds.power];
    if (name === "abs") return [`\\left|${args("plain").join()}\\right|`, binds.single];
    const root = roots[name];
    if (root) return [`${root}{${args("plain").join()}}`, binds.single];
    const own = name === "log" ? "ln" : name;
    if (named.has(own)) return [callOf(`\\${own}`, args("plain")), binds.power];
    return [callOf(writing.call(name), args("argument")), binds.power];
  };

  return print(root, "plain", false);
}

/** A number that stands in the expression itself. */
function number(value: number): readonly [string, number] {
  const [mantissa = "", exponent] = String(value).split("e");
  if (exponent === undefined) return [mantissa, value < 0 ? binds.sign : binds.single];
  const power = `10^{${Number(exponent)}}`;
  return mantissa === "1" ? [power, binds.power] : [`${mantissa} \\times ${power}`, binds.product];
}
