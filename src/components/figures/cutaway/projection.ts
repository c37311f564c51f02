import { r1 } from "../../../widgets/pictures/numbers.ts";
import { type Point, polyline } from "../../../widgets/pictures/path.ts";

/** Cabinet projection: what lies behind is drawn half as long, at 45° to the upper right, so by so much aside and up. */
export const back = Math.SQRT1_2 / 2;
export const behind = ([x, y]: Point, away: number): Point => [x + away, y - away];

// A circle of radius 1 that stands across x is drawn as this ellipse; its highest point lies to the right of its middle.
const [long, short] = [1.0679, 0.3311];
export const highest: Point = [0.1179, -1.0607];
export const upright = (r: number) => `A${r1(long * r)} ${r1(short * r)} 97 0 `;
export const lying = (r: number) => `a${r1(long * r)} ${r1(short * r)} -7 1 0 `;

export const shape = (points: readonly Point[]) => `${polyline(points)}z`;

/** A face that runs straight back from the line between two points. */
export const face = (a: Point, b: Point, depth: number) => shape([a, b, behind(b, depth), behind(a, depth)]);

/** A circle across x, open from its top to its foot on the side towards the eye. */
const rim = (x: number, y: number, r: number) => `M${r1(x)} ${r1(y - r)}${upright(r)}0 ${r1(x)} ${r1(y + r)}`;
const ring = (x: number, y: number, r: number) => `${rim(x, y, r)}${upright(r)}0 ${r1(x)} ${r1(y - r)}z`;

/** The outside of a pipe along x, and the cut end that it shows where the wall before the section is gone. */
export function pipe(from: number, to: number, y: number, r: number, isCut: boolean): string {
  const [dx, dy] = [highest[0] * r, highest[1] * r];
  const over = `M${r1(from + dx)} ${r1(y + dy)}H${r1(to + dx)}`;
  const end = isCut ? `L${r1(to)} ${r1(y - r)}${upright(r)}0 ` : `${upright(r)}1 `;
  const under = `${r1(to - dx)} ${r1(y - dy)}H${r1(from - dx)}`;
  return `${over}${end}${under}${upright(r)}1 ${r1(from + dx)} ${r1(y + dy)}z`;
}

/** A pipe with its open end towards the right. */
export const openPipe = (
  from: number,
  to: number,
  y: number,
  bore: number,
  wall: number,
): readonly Piece[] => [
  { look: "body", d: pipe(from, to, y, bore + wall, false) },
  { look: "outline", d: rim(to, y, bore + wall) },
  { look: "body", d: ring(to, y, bore) },
];

/** The cut wall at the end of a pipe. */
export const cutEnd = (x: number, y: number, r: number, wall: number) =>
  `M${r1(x)} ${r1(y - r - wall)}${upright(r + wall)}0 ${r1(x)} ${r1(y + r + wall)}v${-wall}${upright(r)}1 ${r1(x)} ${r1(y - r)}z`;

/** A path, and how it is drawn: class, and the hatch of its metal where it is cut. */
export interface Piece {
  readonly look: "body" | "gap" | "thin" | "thin gap" | "outline";
  readonly d: string;
  readonly cut?: 1 | 2;
}
