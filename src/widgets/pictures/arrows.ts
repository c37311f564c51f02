import { r1 } from "./numbers.ts";
import { type Point, polyline } from "./path.ts";

/** An arrowhead: its point, and the direction in which it points. */
export interface Tip {
  readonly at: Point;
  readonly to: Point;
}

/** A solid arrowhead as a path: so long, and half so wide. */
export function head({ at: [x, y], to: [dx, dy] }: Tip, long: number, half: number): string {
  const side = (s: number): Point => [x - long * dx - s * half * dy, y - long * dy + s * half * dx];
  return `${polyline([[x, y], side(-1), side(1)])}z`;
}

/** A turn of air about a point, and its arrowhead. */
export const stir = ([x, y]: Point): string => `M${r1(x + 4)} ${r1(y)}a4 4 0 1 1-4-4`;
export const stirHead = ([x, y]: Point): string => head({ at: [x + 4, y - 4], to: [1, 0] }, 6, 3);
