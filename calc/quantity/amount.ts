import { type Dimension, dimensionOf, isSame, kindOf, kindOfUnit, product, pureNumber } from "./dimension.ts";
import type { SI } from "./domain-error.ts";
import { isPlain, type Operation, type Tree } from "./expression.ts";
import { type Kind, kinds } from "./kinds.ts";
import { Refusal } from "./refusal.ts";
import { isPressure } from "./unit-names.ts";
import { toSI, type UnitContext } from "./units.ts";

/**
 * What a typed calculation comes to, in SI.
 *
 * A `point` counts from somewhere: a temperature on a scale, a pressure that says gauge or absolute. Between two of them
 * is a `difference`. A number of K or of plain psi can be either, which what is done with it decides.
 */
export interface Amount {
  readonly value: SI;
  readonly dimension: Dimension;
  readonly role: "free" | "point" | "difference";
  /** It counts from a zero of its own, so twice its number is not twice as much. */
  readonly isOnScale: boolean;
}

const plain = (value: number): Amount => ({ value, dimension: pureNumber, role: "free", isOnScale: false });

const plainOperations: Readonly<Record<Operation, (a: number, b: number) => number>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
};

/** The number that a calculation without units comes to. Throws a Refusal where it divides by zero or outgrows numbers. */
export function plainNumber(tree: Tree): number {
  if (tree.is === "number") return tree.number;
  if (tree.is === "unit") throw new Error("a plain number has no unit");
  if (tree.is === "negative") return -plainNumber(tree.of);
  const [a, b] = [plainNumber(tree.left), plainNumber(tree.right)];
  if (tree.is === "/" && b === 0) throw new Refusal("This calculation divides by zero.");
  const result = plainOperations[tree.is](a, b);
  if (Number.isNaN(result)) throw new Refusal("A power of a negative number has no value here.");
  if (!Number.isFinite(result)) throw new Refusal("This calculation comes out too large to compute with.");
  return result;
}

/** What an amount is, in plain words. */
export const nameOf = ({ dimension, role }: Pick<Amount, "dimension" | "role">): string => {
  if (isSame(dimension, pureNumber)) return "a plain number";
  const kind = kindOf(dimension);
  if (kind === "pressure") return role === "difference" ? "a pressure difference" : "a pressure";
  if (kind === "temperature") return role === "difference" ? "a temperature difference" : "a temperature";
  if (!kind) return "a quantity that no field takes";
  const { name } = kinds[kind];
  return `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`;
};

const onScale = (amount: Amount): string =>
  kindOf(amount.dimension) === "temperature"
    ? "A temperature in °C or °F counts from a zero of its own, so it cannot be multiplied, divided or raised. Type it in K or °R."
    : "A gauge pressure counts from the barometer, so it cannot be multiplied, divided or raised. Type it as an absolute one.";

function sum(a: Amount, b: Amount, sign: 1 | -1): Amount {
  if (!isSame(a.dimension, b.dimension)) {
    const hint = [a, b].some(({ dimension }) => isSame(dimension, pureNumber))
      ? " Give each number its unit."
      : "";
    throw new Refusal(`There is no sum of ${nameOf(a)} and ${nameOf(b)}.${hint}`);
  }
  const value = a.value + sign * b.value;
  if (b.role === "point" && (sign < 0 || a.role === "point")) {
    if (sign > 0) {
      throw new Refusal(
        kindOf(a.dimension) === "temperature"
          ? "Two temperatures cannot be added. Type what is added to one as a difference, in K or °R."
          : "Two pressures that say what they count from cannot be added. Type what is added to one without gauge or absolute.",
      );
    }
    return { ...a, value, role: "difference", isOnScale: false };
  }
  const point = [a, b].find(({ role }) => role === "point");
  return { ...(point ?? (a.role === "difference" ? a : b)), value };
}

function powerOf(a: Amount, exponent: number): Amount {
  if (a.isOnScale) throw new Refusal(onScale(a));
  if (!Number.isInteger(exponent) || Math.abs(exponent) > 4)
    throw new Refusal("A quantity can be raised to a whole power from −4 to 4.");
  const value = a.value ** exponent;
  if (!Number.isFinite(value))
    throw new Refusal("This calculation divides by zero, or outgrows all numbers.");
  return { value, dimension: a.dimension.map((n) => n * exponent), role: "free", isOnScale: false };
}

function times(a: Amount, b: Amount, power: 1 | -1): Amount {
  for (const amount of [a, b]) if (amount.isOnScale) throw new Refusal(onScale(amount));
  if (power < 0 && b.value === 0) throw new Refusal("This calculation divides by zero.");
  const value = power < 0 ? a.value / b.value : a.value * b.value;
  const scaled = [a, b].find(({ dimension }) => !isSame(dimension, pureNumber));
  const dimension = product(a.dimension, b.dimension, power);
  const isScaled = scaled !== undefined && isSame(dimension, scaled.dimension);
  return { value, dimension, role: isScaled ? scaled.role : "free", isOnScale: false };
}

/**
 * What a calculation with units comes to. `kind` is what the field takes, which decides between units of one name.
 * Throws a Refusal where it has no meaning, and a DomainError at `barometer` where a gauge needs one.
 */
export function amountOf(tree: Tree, kind: Kind, context: UnitContext): Amount {
  if (isPlain(tree)) return plain(plainNumber(tree));
  switch (tree.is) {
    case "number":
      return plain(tree.number);
    case "unit": {
      const { candidates, counts } = tree.named;
      const offered = candidates.find(({ id }) => (kinds[kind].units as readonly string[]).includes(id));
      const unit = offered ?? candidates[0];
      const own = unit && kindOfUnit(unit.id);
      if (!unit || !own) throw new Refusal(`${tree.typed} is not a unit known here.`);
      const number = plainNumber(tree.of);
      const isGauge = counts === "gauge";
      const value = toSI(number, isGauge ? `${unit.id}-g` : unit.id, context);
      const dimension = dimensionOf(own);
      const isOnScale = unit.offset !== undefined || isGauge;
      const isPoint = isOnScale || (isPressure(unit) && counts === "absolute");
      return { value, dimension, role: isPoint ? "point" : "free", isOnScale };
    }
    case "negative": {
      const of = amountOf(tree.of, kind, context);
      if (of.isOnScale) throw new Refusal(onScale(of));
      return { ...of, value: -of.value };
    }
    case "^":
      if (!isPlain(tree.right)) throw new Refusal("A power is a plain number.");
      return powerOf(amountOf(tree.left, kind, context), plainNumber(tree.right));
    default: {
      const left = amountOf(tree.left, kind, context);
      const right = amountOf(tree.right, kind, context);
      if (tree.is === "+" || tree.is === "-") return sum(left, right, tree.is === "+" ? 1 : -1);
      return times(left, right, tree.is === "*" ? 1 : -1);
    }
  }
}
