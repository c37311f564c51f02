import type { Tip } from "./arrows.ts";
import type { Box } from "./boxes.ts";
import type { Point } from "./path.ts";

/** The room for a drawing of hoses, in pixels. */
export interface Frame {
  /** Where the tubes are. The air comes from the left, and water enters at the bottom. */
  readonly core: Box;
  /** How thick tanks are, how long hoses, and how wide the room between passes that a pipe or stirred air parts. */
  readonly tank: number;
  readonly hose: number;
  readonly gap: number;
  /** Many channels in one pass are drawn about this far apart. */
  readonly pitch: number;
}

export const up: Point = [0, -1];
export const down: Point = [0, 1];
export const left: Point = [-1, 0];
export const right: Point = [1, 0];

/** One pass of the water, as far as it stands in the air. */
export interface Pass {
  /** 1 for the pass that the water takes first. */
  readonly pass: number;
  readonly box: Box;
  readonly runs: Point;
}

/** A hose that leads water in or out. */
export interface HoseEnd {
  readonly leads: "in" | "out";
  /** Its free end. */
  readonly at: Point;
  readonly side: "top" | "bottom";
  /** The side on which its word stands. */
  readonly word: "left" | "right";
}

/** What a drawing of hoses is made of, in pixels. */
export interface Hoses {
  readonly passes: readonly Pass[];
  readonly cores: readonly (readonly Point[])[];
  readonly shells: readonly Box[];
  readonly tanks: readonly Box[];
  /** Where one pass ends and the next begins. */
  readonly bounds: readonly (readonly Point[])[];
  /** What leads the air: fins, plates, baffles. */
  readonly plates: readonly (readonly Point[])[];
  /** Lines of water, each from where it comes to where it goes. */
  readonly water: readonly (readonly Point[])[];
  readonly waterTips: readonly Tip[];
  readonly ends: readonly HoseEnd[];
  readonly air: readonly (readonly [Point, Point])[];
  /** Where air is stirred. */
  readonly stirs: readonly Point[];
}

/** An empty drawing, to be filled. */
export const sketch = () => ({
  passes: [] as Pass[],
  cores: [] as Point[][],
  shells: [] as Box[],
  tanks: [] as Box[],
  bounds: [] as Point[][],
  plates: [] as Point[][],
  water: [] as Point[][],
  waterTips: [] as Tip[],
  ends: [] as HoseEnd[],
  air: [] as [Point, Point][],
  stirs: [] as Point[],
});
export type Sketch = ReturnType<typeof sketch>;

/** The middles of equal parts of a span. */
export const shares = (from: number, span: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + (span * (i + 0.5)) / count);

/** The places between equal parts of a span. */
export const cuts = (from: number, span: number, count: number): number[] =>
  Array.from({ length: count - 1 }, (_, i) => from + (span * (i + 1)) / count);

export const middle = ({ x, w }: Box): number => x + w / 2;

export const corners = ({ x, y, w, h }: Box): Point[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

/** Lines across a box, such as its fins. */
export const across = ({ x, w }: Box, heights: readonly number[]): Point[][] =>
  heights.map((y) => [
    [x, y],
    [x + w, y],
  ]);

/** Air at some heights, on both sides of a core, as long as there is room. */
export function throughAir(drawn: Sketch, heights: readonly number[], core: Box): void {
  const room = core.x - 4;
  for (const y of heights) {
    drawn.air.push([
      [4, y],
      [core.x - 4, y],
    ]);
    drawn.air.push([
      [core.x + core.w + 5, y],
      [core.x + core.w + room - 2, y],
    ]);
  }
}

/** A hose from where it meets the cooler; gives its free end. */
export function addHose(
  drawn: Sketch,
  hose: number,
  { at, ...end }: Omit<HoseEnd, "at"> & { readonly at: Point },
): void {
  const isBottom = end.side === "bottom";
  const free: Point = [at[0], at[1] + (isBottom ? hose : -hose)];
  const isIn = end.leads === "in";
  drawn.water.push(isIn ? [free, at] : [at, free]);
  drawn.waterTips.push({ at: isIn ? at : free, to: isBottom === isIn ? up : down });
  drawn.ends.push({ ...end, at: free });
}

/** Over the end of the tubes from one column to another: half of an ellipse, the higher the wider. */
export function bend(from: number, to: number, y: number, side: "top" | "bottom"): Point[] {
  const half = (to - from) / 2;
  const rise = Math.min(24, 3 + Math.abs(half) * 0.6) * (side === "top" ? -1 : 1);
  return Array.from({ length: 9 }, (_, i): Point => {
    const angle = Math.PI * (1 - i / 8);
    return [from + half * (1 + Math.cos(angle)), y + rise * Math.sin(angle)];
  });
}
