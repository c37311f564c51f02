import { drawable } from "./numbers.ts";
import type { Point } from "./path.ts";
import { asSentence, together } from "./text.ts";
import type { Axis, ChartProps, Curve } from "./types.ts";

export const axisName = ({ label, unit }: Axis): string => (unit ? `${label}, ${unit}` : label);

/** The chart as a sentence, for those who do not see it: where each curve begins, turns and ends, and the state. */
export function describeChart({ title, x, y, curves, state, best, limit }: ChartProps): string {
  const on = ({ unit }: Axis, number: string) => together({ number, unit });
  const at = ([px, py]: Point) => `${on(y, inWords(py))} at ${on(x, inWords(px))}`;
  return [
    title,
    `${axisName(y)}, against ${axisName(x)}`,
    ...curves.map((curve) => describeCurve(curve, at)),
    best && `${best.label} at ${on(x, inWords(best.x))}`,
    state && `Here ${on(y, state.yText)} at ${on(x, state.xText)}`,
    limit && `Hatched: ${limit.label}`,
  ]
    .filter((text) => text !== undefined)
    .map(asSentence)
    .join(" ");
}

function describeCurve({ label, points }: Curve, at: (point: Point) => string): string {
  const known = points.filter(([x, y]) => drawable(x) && drawable(y));
  const heights = known.map(([, y]) => y);
  const [first, last] = [heights[0], heights.at(-1)];
  const turn = [Math.max(...heights), Math.min(...heights)].find((y) => y !== first && y !== last);
  const path = [known[0], known.find(([, y]) => y === turn), known.at(-1)]
    .flatMap((point) => (point ? [at(point)] : []))
    .join(", then ");
  return `${label ? `${label}: ` : ""}${path || "no values here"}`;
}

/** Four significant figures, a true minus. */
const inWords = (v: number) => String(Number(v.toPrecision(4))).replace("-", "−");
