import { type Kind, type KindInfo, kinds } from "./kinds.ts";

/** Powers of kg, m, s, K, mol, turns and radians. */
export type Dimension = readonly number[];

const base: Readonly<Record<string, Dimension>> = {
  "1": [0, 0, 0, 0, 0, 0, 0],
  kg: [1, 0, 0, 0, 0, 0, 0],
  m: [0, 1, 0, 0, 0, 0, 0],
  s: [0, 0, 1, 0, 0, 0, 0],
  K: [0, 0, 0, 1, 0, 0, 0],
  mol: [0, 0, 0, 0, 1, 0, 0],
  rev: [0, 0, 0, 0, 0, 1, 0],
  rad: [0, 0, 0, 0, 0, 0, 1],
  N: [1, 1, -2, 0, 0, 0, 0],
  Pa: [1, -1, -2, 0, 0, 0, 0],
  J: [1, 2, -2, 0, 0, 0, 0],
  W: [1, 2, -3, 0, 0, 0, 0],
};

export const pureNumber: Dimension = base["1"] as Dimension;

export const product = (a: Dimension, b: Dimension, power = 1): Dimension =>
  a.map((n, i) => n + power * (b[i] as number));

export const isSame = (a: Dimension, b: Dimension): boolean => a.every((n, i) => n === b[i]);

/** `kg/(m2 s)` and `per Pa`: behind the stroke or the word all is divided by. */
function fromSymbol(si: string): Dimension {
  let power = 1;
  let dimension = pureNumber;
  for (const [sign, name, exponent] of si.matchAll(/[/]|([A-Za-z]+|1)(\d?)/g)) {
    if (sign === "/" || name === "per") power = -1;
    else dimension = product(dimension, base[name ?? ""] as Dimension, power * Number(exponent || 1));
  }
  return dimension;
}

const ofKinds = new Map(
  Object.entries<KindInfo>(kinds).map(([kind, { si }]) => [kind as Kind, fromSymbol(si)] as const),
);

export const dimensionOf = (kind: Kind): Dimension => ofKinds.get(kind) as Dimension;

/** The first kind that offers the unit with this id. */
export const kindOfUnit = (id: string): Kind | undefined =>
  (Object.keys(kinds) as Kind[]).find((kind) => (kinds[kind] as KindInfo).units.includes(id));

/** The first kind of this dimension, if there is one: a power, not a heat flow. */
export const kindOf = (dimension: Dimension): Kind | undefined =>
  [...ofKinds].find(([, own]) => isSame(own, dimension))?.[0];
