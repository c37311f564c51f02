import type { SI } from "../../../calc/quantity/domain-error.ts";
import { r1 } from "./numbers.ts";
import type { Point } from "./path.ts";

/** The ribbon where it runs level, at a station: centre and half of its thickness, in pixels. */
export interface Level {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

/** Where the ribbon begins and ends, and how far it runs level on either side of a station. */
export interface Reach {
  readonly left: number;
  readonly right: number;
  readonly level: number;
}

/**
 * The corners of one edge of the ribbon (`side` −1 above, 1 below), in pairs: a level piece lies between the first two, a
 * slope between the next two, and so on. On a slope the edge is shifted sideways by t·tan(θ/2), t being half of the
 * ribbon's thickness, which keeps the thickness across a slope of angle θ.
 */
export const edge = (levels: readonly Level[], reach: Reach, side: 1 | -1): Point[] =>
  levels.flatMap((level, i): Point[] => {
    const y = level.y + side * level.half;
    const before = levels[i - 1];
    const after = levels[i + 1];
    return [
      [before ? level.x - reach.level + side * lean(before, level, reach) : reach.left, y],
      [after ? level.x + reach.level + side * lean(level, after, reach) : reach.right, y],
    ];
  });

function lean(a: Level, b: Level, reach: Reach): number {
  const rise = a.y - b.y;
  const slope = (2 * rise) / (b.x - a.x - 2 * reach.level);
  const shift = (((a.half + b.half) / 2) * slope) / (1 + Math.hypot(1, slope));
  return Math.max(-0.9 * reach.level, Math.min(0.9 * reach.level, shift));
}

/** Relative commands from the first corner, where the pen is, to the last. The same corners in reverse give the way back. */
function along(corners: readonly Point[]): string {
  const round = corners.map(([x, y]) => [r1(x), r1(y)] as const);
  return round
    .map(([x, y], i) => {
      const [px, py] = round[i - 1] ?? [x, y];
      const [dx, dy] = [r1(x - px), r1(y - py)];
      return i % 2 ? `h${dx}` : i && `c${r1(dx / 2)} 0 ${r1(dx / 2)} ${dy} ${dx} ${dy}`;
    })
    .slice(1)
    .join("");
}

const start = ([corner = [0, 0]]: readonly Point[]) => `${r1(corner[0])} ${r1(corner[1])}`;

export const open = (corners: readonly Point[]): string => `M${start(corners)}${along(corners)}`;

export function closed(above: readonly Point[], below: readonly Point[]): string {
  const back = [...below].reverse();
  return `${open(above)}L${start(back)}${along(back)}z`;
}

/** Points along an edge, close enough to keep labels clear of it. */
export const samples = (corners: readonly Point[]): Point[] =>
  corners.flatMap((a, i) => {
    const b = corners[i + 1] ?? a;
    return Array.from({ length: 12 }, (_, k): Point => {
      const u = k / 12;
      return [a[0] + (b[0] - a[0]) * across(u), a[1] + (b[1] - a[1]) * up(u)];
    });
  });

/** The slope's cubic: how far along and how far up it is at u. */
const across = (u: number) => 1.5 * u - 1.5 * u * u + u ** 3;
const up = (u: number) => u * u * (3 - 2 * u);

/** The air tokens --air-0 to --air-6 are the colours of air at these temperatures, in °C. */
const tokensAt = [0, 25, 50, 90, 130, 180, 230];

/** The colour of air at a temperature, mixed from the two tokens on either side of it. */
export function airColour(T: SI): string {
  const celsius = Math.max(0, Math.min(230, T - 273.15));
  const next = Math.max(
    1,
    tokensAt.findIndex((at) => celsius <= at),
  );
  const [low = 0, high = 1] = tokensAt.slice(next - 1);
  const share = Math.round((100 * (celsius - low)) / (high - low));
  return `color-mix(in srgb,var(--air-${next - 1}),var(--air-${next}) ${share}%)`;
}

export interface Stop {
  /** 0 at the ribbon's left end, 1 at its right. */
  readonly offset: number;
  readonly colour: string;
}

/** The colours along the ribbon, which follow its temperature. */
export function stops(levels: readonly Level[], temperatures: readonly SI[], reach: Reach): Stop[] {
  return levels.flatMap((a, i) => {
    const b = levels[i + 1] ?? a;
    const [Ta = 0, Tb = Ta] = temperatures.slice(i);
    const from = a.x + reach.level;
    const run = b.x - reach.level - from;
    return (Ta === Tb ? [0] : [0, 1, 2, 3, 4, 5, 6]).map((k) => ({
      offset: Number(((from + run * across(k / 6) - reach.left) / (reach.right - reach.left)).toFixed(3)),
      colour: airColour(Ta + (Tb - Ta) * up(k / 6)),
    }));
  });
}
