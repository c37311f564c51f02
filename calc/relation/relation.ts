import type { SI } from "../quantity/domain-error.ts";
import type { Kind } from "../quantity/kinds.ts";

/** How well a source is known. `page read` is kept for a page that was opened and read. */
export type Standing =
  | "page read"
  | "open reference read"
  | "derived here"
  | "from memory"
  | "common practice";

/** `key` is an entry of calc/sources.bib, `where` the place in it: equation, table, page. */
export interface Source {
  readonly key: string;
  readonly where: string;
  readonly standing: Standing;
}

/** `symbol` is an entry of calc/symbols.ts. */
export interface Quantity {
  readonly symbol: string;
  readonly kind: Kind;
}

/** The span of one input that the sources cover, in SI. Outside it the number stays, and the page says `says`. */
export interface Range {
  readonly input: string;
  readonly from: SI;
  readonly to: SI;
  readonly says: string;
}

export interface Declared<In extends string> {
  /** `topic/file`: the file's path inside calc/, without its ending. */
  readonly id: string;
  readonly title: string;
  readonly inputs: Readonly<Record<In, Quantity>>;
  readonly result: Quantity;
  readonly sources: readonly [Source, ...Source[]];
  readonly ranges?: readonly Range[];
  readonly accuracy?: string;
  /**
   * The units in which working shows its numbers. `kilo` (the default) is kPa, kJ, kW with kg, m, s, K; it is coherent
   * unless a relation mixes pressure or energy with a force or a speed, and then `si` puts all of it in base units. A
   * test computes the printed arithmetic in these units.
   */
  readonly working?: "kilo" | "si";
  compute(x: Readonly<Record<In, SI>>): SI;
}

/**
 * A formula, declared once. What a reader sees typeset is printed from this, what is computed is `compute`, and a test
 * proves that the two agree.
 *
 * `expression` and `residual` are in mathjs syntax over the names of the inputs, the constants of calc/constants.ts and
 * the `name`s by which other relations may be called. A residual also uses `unknown`, which is the result, and is zero
 * at the result.
 */
export type Relation<In extends string = string> =
  | (Declared<In> & { readonly form: "explicit"; readonly expression: string; readonly name?: string })
  | (Declared<In> & { readonly form: "implicit"; readonly residual: string; readonly unknown: string })
  | (Declared<In> & { readonly form: "property"; readonly tex: string; readonly name: string })
  | (Declared<In> & { readonly form: "numerical"; readonly tex: string; readonly method: string });

/** Any relation, whatever its inputs are called. */
// biome-ignore lint/suspicious/noExplicitAny: a list of relations holds functions of different records
export type AnyRelation = Relation<any>;

type Plain<In extends string, Form extends Relation["form"]> = Omit<
  Extract<Relation<In>, { form: Form }>,
  "form"
>;

export const explicit = <In extends string>(r: Plain<In, "explicit">) =>
  ({ ...r, form: "explicit" }) as Extract<Relation<In>, { form: "explicit" }>;
export const implicit = <In extends string>(r: Plain<In, "implicit">) =>
  ({ ...r, form: "implicit" }) as Extract<Relation<In>, { form: "implicit" }>;
export const property = <In extends string>(r: Plain<In, "property">) =>
  ({ ...r, form: "property" }) as Extract<Relation<In>, { form: "property" }>;
export const numerical = <In extends string>(r: Plain<In, "numerical">) =>
  ({ ...r, form: "numerical" }) as Extract<Relation<In>, { form: "numerical" }>;
