import { type MathNode, parse, type Unit, unit } from "mathjs";
import { describe, expect, test } from "vitest";
import { type Constant, constants } from "../../calc/constants.ts";
import { DomainError, type SI } from "../../calc/quantity/domain-error.ts";
import { type Kind, kinds } from "../../calc/quantity/kinds.ts";
import { toSI } from "../../calc/quantity/units.ts";
import type { AnyRelation, Quantity, Standing } from "../../calc/relation/relation.ts";
import { workingNumber, workingUnit } from "../../calc/relation/working.ts";
import bib from "../../calc/sources.bib?raw";
import { type SymbolEntry, symbols } from "../../calc/symbols.ts";
import { sidesOf } from "../../src/integrations/typeset/print-expression.ts";
import { typesetRelation, typesetSymbol } from "../../src/integrations/typeset/relation.ts";
import { workingConstant } from "../../src/integrations/typeset/relation-tex.ts";

type Values = Readonly<Record<string, number>>;
type Callable = AnyRelation & { readonly name: string };

const modules = import.meta.glob<Record<string, unknown>>("../../calc/**/*.ts", { eager: true });

const isRelation = (value: unknown): value is AnyRelation =>
  typeof value === "object" && value !== null && "form" in value && "compute" in value;

const found = Object.entries(modules).flatMap(([path, module]) =>
  Object.values(module)
    .filter(isRelation)
    .map((relation) => ({ file: path.replace("../../calc/", "").replace(/\.ts$/, ""), relation })),
);
const relations = found.map(({ relation }) => relation);
const callable = relations.filter((r): r is Callable => "name" in r);
const withExpression = relations.filter((r) => r.form === "explicit" || r.form === "implicit");

const bibliography = new Set([...bib.matchAll(/^@\w+\s*\{\s*([^,\s]+)\s*,/gm)].map(([, key]) => key));

const inputsOf = (relation: AnyRelation) => Object.entries(relation.inputs as Record<string, Quantity>);

// Where a test takes its points if the declaration gives no range: air near an engine.
const spanOfKind: Readonly<Record<Kind, readonly [SI, SI]>> = {
  pressure: [5e4, 5e5],
  gaugePressure: [1e4, 3e5],
  pressureDifference: [100, 2e4],
  temperature: [250, 450],
  mass: [0.1, 10],
  duration: [1, 100],
  energy: [1e3, 1e6],
  temperatureDifference: [5, 100],
  density: [0.8, 5],
  specificVolume: [0.2, 1.2],
  massFlow: [0.05, 2],
  volumeFlow: [0.05, 2],
  liquidFlow: [1e-5, 1e-2],
  volume: [1e-3, 2e-2],
  ratio: [1.1, 4],
  fraction: [0.3, 0.9],
  humidityRatio: [0.001, 0.03],
  power: [1e4, 5e5],
  heatFlow: [1e3, 2e5],
  specificEnergy: [1e4, 2e5],
  specificHeat: [900, 1100],
  rotationalSpeed: [10, 120],
  specificFuel: [5e-8, 1e-7],
  altitude: [0, 8000],
  speed: [5, 100],
  viscosity: [1e-5, 3e-5],
  conductivity: [0.02, 0.04],
  molarMass: [0.018, 0.03],
  conductance: [100, 5000],
  filmCoefficient: [20, 8000],
  thermalResistance: [1e-6, 1e-3],
  foulingFactor: [1e-5, 5e-4],
  capacityRate: [100, 5000],
  length: [0.02, 0.2],
  pipeLength: [0.1, 20],
  area: [1e-3, 3e-2],
  angle: [0.2, 1.5],
  force: [10, 5000],
  torque: [1, 500],
  massFlux: [10, 200],
  flowCoefficient: [1e-3, 1e-2],
  head: [1, 30],
  expansivity: [1e-6, 1e-4],
  modulus: [5e10, 2.5e11],
  compliance: [1e-11, 1e-9],
};

// Symbols with a narrower span than their kind: an inlet below an outlet, water below the air, whole numbers, and what
// hardly varies.
const spanOfSymbol: Readonly<Record<string, readonly [SI, SI]>> = {
  T_in: [260, 320],
  T_s: [330, 390],
  T_out: [400, 450],
  h_in: [0, 4e4],
  h_s: [6e4, 1e5],
  h_out: [1.1e5, 2e5],
  s_in: [-50, 50],
  s_out: [150, 400],
  R_m: [287, 300],
  kappa: [1.3, 1.4],
  f_e: [1, 1.02],
  p_v: [500, 5000],
  p_ws: [500, 5000],
  T_w_in: [230, 245],
  T_w_out: [246, 259],
  NTU: [0.05, 8],
  R: [0.02, 1.5],
  N_p: [3, 3],
  N_r: [3, 3],
  k_s: [1e-6, 1e-4],
  beta_d: [0.2, 0.95],
  Ma: [0.05, 0.95],
  p_crit: [2e7, 2.3e7],
  p_surf: [8e4, 2e5],
};

/** Numbers in 0..1, the same in every run (a linear congruential generator). */
function* randomly(): Generator<number, never> {
  for (let state = 1; ; ) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 2 ** 32;
  }
}

interface Point {
  readonly x: Values;
  readonly value: SI;
}

/** A relation refuses input with a `DomainError`, and a helper inside it with a `RangeError`. */
const isRefusal = (error: unknown) => error instanceof DomainError || error instanceof RangeError;

/** Points inside the declared ranges that the relation accepts; fails where it refuses more than half. */
function pointsOf(relation: AnyRelation, wanted = 100): readonly Point[] {
  const random = randomly();
  const points: Point[] = [];
  for (let i = 0; i < wanted; i++) {
    const x = Object.fromEntries(
      inputsOf(relation).map(([name, { symbol, kind }]) => {
        const range = relation.ranges?.find(({ input }) => input === name);
        const [from, to] = range ? [range.from, range.to] : (spanOfSymbol[symbol] ?? spanOfKind[kind]);
        return [name, from + (to - from) * random.next().value];
      }),
    );
    try {
      points.push({ x, value: relation.compute(x) });
    } catch (error) {
      if (!isRefusal(error)) throw error;
    }
  }
  expect(points.length, "points that the relation accepts").toBeGreaterThanOrEqual(wanted / 2);
  return points;
}

/** How the quantities of an expression are represented while it is evaluated. */
interface Representation<T> {
  readonly constant: (constant: Constant) => T;
  readonly write: (value: SI, kind: Kind) => T;
  readonly read: (value: T, kind: Kind) => SI;
}

/** The expression, or both sides of the residual. */
function treesOf(relation: AnyRelation): readonly MathNode[] {
  if (relation.form === "explicit") return [parse(relation.expression)];
  if (relation.form !== "implicit") return [];
  const sides = sidesOf(parse(relation.residual));
  if (!sides) throw new Error(`${relation.id}: a residual is a difference, left - right`);
  return sides;
}

/** What each tree gives at a point, with the unknown of an implicit relation at the computed value. */
function evaluate<T>(
  relation: AnyRelation,
  { x, value }: Point,
  { constant, write, read }: Representation<T>,
): readonly T[] {
  const call =
    (callee: Callable) =>
    (...args: readonly T[]) => {
      const given = inputsOf(callee).map(([name, { kind }], i) => [name, read(args[i] as T, kind)] as const);
      return write(callee.compute(Object.fromEntries(given)), callee.result.kind);
    };
  const scope: Record<string, unknown> = {};
  for (const one of callable) scope[one.name] = call(one);
  for (const [name, entry] of Object.entries(constants)) scope[name] = constant(entry);
  for (const [name, { kind }] of inputsOf(relation)) scope[name] = write(x[name] as SI, kind);
  if (relation.form === "implicit") scope[relation.unknown] = write(value, relation.result.kind);
  return treesOf(relation).map((tree) => tree.compile().evaluate(scope) as T);
}

const inSI: Representation<number> = {
  constant: ({ value }) => value,
  write: (value) => value,
  read: (value) => value,
};

const inWorkingUnits = (relation: AnyRelation): Representation<number> => ({
  constant: (constant) => workingConstant(constant, relation.working),
  write: (value, kind) => workingNumber(value, kind, relation.working),
  read: (value, kind) => toSI(value, workingUnit(kind, relation.working)),
});

/** The name that mathjs has for the SI unit of a kind; a revolution has no dimension, and a number and a radian no unit. */
function mathjsUnit(kind: Kind): string | undefined {
  const { si } = kinds[kind];
  if (si === "1" || si === "kg/kg" || si === "rad") return undefined;
  return si === "rev/s" ? "Hz" : si.replaceAll(/m([23])/g, "m^$1").replace(/^per (\w+)$/, "$1^-1");
}

const withUnits: Representation<Unit | number> = {
  constant: (constant) => (constant.unit === "1" ? constant.value : unit(constant.value, constant.unit)),
  write: (value, kind) => {
    const name = mathjsUnit(kind);
    return name ? unit(value, name) : value;
  },
  /** Throws where the dimension is not the kind's. */
  read: (value, kind) => {
    const name = mathjsUnit(kind);
    if (typeof value !== "number" && name) return value.toNumber(name);
    if (typeof value === "number" && !name) return value;
    throw new Error(`${value.toString()} is no ${kinds[kind].name}`);
  },
};

/** An expression gives the result, and both sides of a residual are equal. */
function expectAgreement(values: readonly number[], result: number): void {
  const [a = Number.NaN, b = result] = values;
  const says =
    values.length > 1
      ? `the sides of the residual are ${a} and ${b}`
      : `the expression gives ${a}, compute gives ${b}`;
  expect(Math.abs(a - b), says).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(a), Math.abs(b)));
}

test("there are relations, and each stands alone in the file that its id names", () => {
  expect(relations.length).toBeGreaterThan(0);
  const misnamed = found.filter(({ relation, file }) => relation.id !== file);
  expect(misnamed.map(({ relation, file }) => `calc/${file}.ts declares the id ${relation.id}`)).toEqual([]);
  expect(new Set(relations.map(({ id }) => id)).size).toBe(relations.length);
});

test("every symbol has one meaning: no two have the same TeX", () => {
  const tex = Object.values(symbols).map((symbol) => symbol.tex);
  expect(tex.filter((one, i) => tex.indexOf(one) !== i)).toEqual([]);
  for (const key of Object.keys(symbols)) expect(() => typesetSymbol(key)).not.toThrow();
});

test("no two relations are called by the same name", () => {
  const names = callable.map(({ name }) => name);
  expect(names.filter((one, i) => names.indexOf(one) !== i)).toEqual([]);
});

describe.each(relations.map((relation) => [relation.id, relation] as const))("%s", (_, relation) => {
  test("its symbols are in calc/symbols.ts", () => {
    const used = [relation.result, ...Object.values(relation.inputs as Record<string, Quantity>)];
    for (const { symbol, kind } of used) {
      const entry = (symbols as Readonly<Record<string, SymbolEntry>>)[symbol];
      expect(entry, `the symbol ${symbol}`).toBeDefined();
      expect(kind, `the kind of ${symbol}`).toBe(entry?.kind ?? kind);
      expect(Object.keys(kinds)).toContain(kind);
    }
    expect(Object.keys(relation.inputs)).not.toContain("=");
  });

  test("its sources are in calc/sources.bib, with a standing", () => {
    const standings: readonly Standing[] = [
      "page read",
      "open reference read",
      "derived here",
      "from memory",
      "common practice",
    ];
    for (const source of relation.sources) {
      expect(bibliography.has(source.key), `calc/sources.bib has no entry "${source.key}"`).toBe(true);
      expect(standings).toContain(source.standing);
      expect(source.where.trim()).not.toBe("");
    }
  });

  test("its ranges name inputs", () => {
    for (const { input, from, to } of relation.ranges ?? []) {
      expect(Object.keys(relation.inputs)).toContain(input);
      expect(from).toBeLessThan(to);
    }
  });

  test("it gives a finite number inside its ranges", () => {
    for (const { value } of pointsOf(relation)) expect(Number.isFinite(value)).toBe(true);
  });

  test("it can be typeset", () => {
    const { symbols: formula, numbers } = typesetRelation(relation);
    expect(formula).toContain("<math");
    expect(numbers).toContain('data-slot="="');
  });
});

describe.each(withExpression.map((relation) => [relation.id, relation] as const))("%s", (_, relation) => {
  const points = () => pointsOf(relation);

  test("what is shown is what is computed", () => {
    for (const point of points()) expectAgreement(evaluate(relation, point, inSI), point.value);
  });

  test("dimensions balance", () => {
    const point = points()[0] as Point;
    const [left, right] = evaluate(relation, point, withUnits);
    if (left === undefined) throw new Error("nothing was evaluated");
    if (right === undefined) expectAgreement([withUnits.read(left, relation.result.kind)], point.value);
    else if (typeof left === "number" || typeof right === "number") expect(typeof left).toBe(typeof right);
    else expect(left.equalBase(right), `${left.toString()} and ${right.toString()}`).toBe(true);
  });

  test("the arithmetic that is shown is true in the units in which it is shown", () => {
    const shown = inWorkingUnits(relation);
    for (const point of points().slice(0, 20))
      expectAgreement(evaluate(relation, point, shown), shown.write(point.value, relation.result.kind));
  });
});
