import { bracketedRoot } from "./bracketed-root.ts";
import { highestPoint } from "./highest-point.ts";

/** A place and the value there. */
export interface Sample {
  readonly x: number;
  readonly y: number;
}

/** The sample that comes nearest to zero, and what lies beyond it. */
export interface Nearest extends Sample {
  /** A place beside it, as near as numbers go, at which there is no value. */
  readonly beyond?: number;
}

export interface EveryRoot {
  /** In rising order. */
  readonly roots: readonly number[];
  /** Stretches of neighbouring points at all of which the value is zero, with both ends. None of them is among the roots. */
  readonly stretches: readonly { readonly from: number; readonly to: number }[];
  /** Null where there is no value at any point. */
  readonly nearest: Nearest | null;
  /** The lowest and the highest value seen. */
  readonly lowest: number;
  readonly highest: number;
}

/** Halvings of the step in which values end. */
const HALVINGS = 30;
/** A value counts as zero where it is this part of the scale or less: a function that searches itself is no smoother. */
const ZERO = 3e-7;
/** A value counts as zero where it is this part of those beside it or less. */
const ZERO_BESIDE = 1e-9;
/** A search ends where a value is this part of the scale or less. */
const ENOUGH = 1e-11;
/** A turn that a parabola puts this much too high is not missed. */
const MARGIN = 5;
/** So many near misses are looked at closely: the nearest first. */
const MOST_VALLEYS = 6;
/** A part of the distance between neighbours to which a root is found, and a touch. */
const FINE_ROOT = 1e-13;
const FINE = 1e-9;

/** Neighbouring samples with a value between all of them, as far as was seen. */
type Piece = Nearest[];

/**
 * Every x at which `f` is zero, as far as rising `points` show it: each change of sign between neighbours, and each place
 * between them at which `f` comes near zero and turns, so that a touch or a pair of roots counts too.
 *
 * `f` is not finite where it has no value; how far its values go is found between the points. A jump through zero, as at a
 * pole, is no root. Roots are as near as the last digits of `f` allow, and |f| there is at most a billionth of
 * the values beside it, or the 3·10⁻⁷th part of `scale`. What happens between two points and returns is not seen.
 *
 * @example everyRoot((x) => x * x - 2, [-2, -1, 0, 1, 2], 1).roots[1] // 1.414
 */
export function everyRoot(f: (x: number) => number, points: readonly number[], scale: number): EveryRoot {
  const search = new Search(f, scale);
  for (const piece of piecesOf(f, points)) search.inPiece(piece);
  return search.found();
}

/** The samples at the points, parted where there is no value, each piece led on to where its values end. */
function piecesOf(f: (x: number) => number, points: readonly number[]): readonly Piece[] {
  const pieces: Piece[] = [];
  let before: Sample | undefined;
  for (const x of points) {
    const here: Sample = { x, y: f(x) };
    const [is, was] = [Number.isFinite(here.y), before !== undefined && Number.isFinite(before.y)];
    if (is && !was) pieces.push(before ? [endOf(f, here, before.x), here] : [here]);
    else if (is) pieces.at(-1)?.push(here);
    else if (was && before) pieces.at(-1)?.push(endOf(f, before, x));
    before = here;
  }
  return pieces.map((piece) => piece.filter(({ x }, i) => x !== piece[i + 1]?.x || i === 0));
}

/** The last place with a value on the way to one that has none. */
function endOf(f: (x: number) => number, inside: Sample, outside: number): Nearest {
  let end = inside;
  let beyond = outside;
  for (let i = 0; i < HALVINGS; i++) {
    const x = (end.x + beyond) / 2;
    if (x === end.x || x === beyond) break;
    const y = f(x);
    if (Number.isFinite(y)) end = { x, y };
    else beyond = x;
  }
  return { ...end, beyond };
}

class Search {
  readonly #f: (x: number) => number;
  readonly #scale: number;
  readonly #roots: number[] = [];
  readonly #stretches: { readonly from: number; readonly to: number }[] = [];
  #nearest: Nearest | null = null;
  #lowest = Number.POSITIVE_INFINITY;
  #highest = Number.NEGATIVE_INFINITY;

  constructor(f: (x: number) => number, scale: number) {
    this.#f = f;
    this.#scale = scale;
  }

  found(): EveryRoot {
    // At an end of all values there may be no change of sign.
    if (this.#roots.length === 0 && this.#nearest && this.#isZero(this.#nearest.y))
      this.#roots.push(this.#nearest.x);
    const roots = this.#roots
      .sort((a, b) => a - b)
      .filter((x, i, all) => i === 0 || x - (all[i - 1] as number) > ZERO * Math.abs(x))
      .filter((x) => !this.#stretches.some(({ from, to }) => x >= from && x <= to));
    return {
      roots,
      stretches: this.#stretches,
      nearest: this.#nearest,
      lowest: this.#lowest,
      highest: this.#highest,
    };
  }

  #see(sample: Nearest): void {
    this.#lowest = Math.min(this.#lowest, sample.y);
    this.#highest = Math.max(this.#highest, sample.y);
    if (!this.#nearest || Math.abs(sample.y) < Math.abs(this.#nearest.y)) this.#nearest = sample;
  }

  #isZero(y: number, beside = 0): boolean {
    return Math.abs(y) <= Math.max(ZERO * this.#scale, ZERO_BESIDE * beside);
  }

  inPiece(piece: Piece): void {
    for (const sample of piece) this.#see(sample);
    this.#inStretches(piece);
    for (const [i, b] of piece.entries()) {
      const a = piece[i - 1];
      if (b.y === 0) this.#roots.push(b.x);
      else if (a && a.y !== 0 && a.y > 0 !== b.y > 0) this.#between(a, b);
    }
    this.#inValleys(piece);
  }

  #inStretches(piece: Piece): void {
    const zeroOnly = (x: number): number => (this.#f(x) === 0 ? 0 : Number.NaN);
    const edge = (inside: Sample, outside: Sample | undefined): number =>
      outside ? endOf(zeroOnly, inside, outside.x).x : inside.x;
    let first = 0;
    for (const [i, here] of piece.entries()) {
      if (here.y !== 0) first = i + 1;
      const next = piece[i + 1];
      if (next?.y === 0 || i - first < 1) continue;
      const from = edge(piece[first] as Sample, piece[first - 1]);
      this.#stretches.push({ from, to: edge(here, next) });
    }
  }

  /** The root between two values of different sign, if the values do not jump there. */
  #between(a: Sample, b: Sample): void {
    const enough = ENOUGH * this.#scale;
    let gap: number | undefined;
    const f = (x: number): number => {
      const y = this.#f(x);
      if (!Number.isFinite(y)) gap = x;
      return Math.abs(y) <= enough ? 0 : y;
    };
    try {
      const x = bracketedRoot(f, a.x, b.x, { tolerance: FINE_ROOT * Math.abs(b.x - a.x), limit: 200 });
      const y = this.#f(x);
      this.#see({ x, y });
      if (this.#isZero(y, Math.max(Math.abs(a.y), Math.abs(b.y)))) this.#roots.push(x);
    } catch {
      // Between the two there is a place without a value: each side of it is looked at for itself.
      if (gap === undefined) return;
      for (const [inside, sides] of [
        [a, (end: Sample) => [a, end]],
        [b, (end: Sample) => [end, b]],
      ] as const) {
        const end = endOf(this.#f, inside, gap);
        this.#see(end);
        const [low, high] = sides(end) as [Sample, Sample];
        if (low.x !== high.x && low.y > 0 !== high.y > 0) this.#between(low, high);
      }
    }
  }

  /** Where a value is nearer to zero than those beside it, the turn between those is found. */
  #inValleys(piece: Piece): void {
    if (piece.length < 2) return;
    const size = (i: number): number => Math.abs(piece[i]?.y ?? Number.POSITIVE_INFINITY);
    const isSame = (i: number, k: number): boolean =>
      piece[k] === undefined || (piece[i] as Sample).y > 0 === (piece[k] as Sample).y > 0;
    const valleys = piece
      .map((_, i) => i)
      .filter((i) => size(i) > 0 && size(i) <= size(i - 1) && size(i) < size(i + 1))
      .filter((i) => isSame(i, i - 1) && isSame(i, i + 1) && this.#isWorthwhile(piece, i))
      .sort((i, k) => size(i) - size(k));
    for (const i of valleys.slice(0, MOST_VALLEYS)) {
      const here = piece[i] as Sample;
      this.#inValley(piece[i - 1] ?? here, here, piece[i + 1] ?? here);
    }
  }

  /** Whether the turn near a sample can touch zero, or be the nearest where nothing else does. */
  #isWorthwhile(piece: Piece, i: number): boolean {
    const [a, here, b] = [piece[i - 1], piece[i] as Sample, piece[i + 1]];
    if (this.#roots.length === 0 && this.#nearest === here) return true;
    if (!a || !b) return false;
    // The top of the parabola through the three.
    const [before, after] = [(here.y - a.y) / (here.x - a.x), (b.y - here.y) / (b.x - here.x)];
    const bend = (after - before) / (b.x - a.x);
    const slope = before + bend * (here.x - a.x);
    const drop = bend === 0 ? 0 : slope ** 2 / (4 * Math.abs(bend));
    return Math.abs(here.y) <= MARGIN * drop + ZERO * this.#scale;
  }

  #inValley(a: Sample, here: Sample, b: Sample): void {
    const sign = Math.sign(here.y);
    const height = (x: number): number => {
      const y = this.#f(x);
      return Number.isFinite(y) ? -sign * y : Number.NEGATIVE_INFINITY;
    };
    const x = highestPoint(height, a.x, b.x, FINE * Math.abs(b.x - a.x));
    const turn: Sample = { x, y: this.#f(x) };
    if (!(height(x) > -Math.abs(here.y))) return;
    this.#see(turn);
    if (this.#isZero(turn.y)) this.#roots.push(x);
    else if (Math.sign(turn.y) !== sign) {
      this.#between(a.x < turn.x ? a : here, turn);
      this.#between(turn, b.x > turn.x ? b : here);
    }
  }
}
