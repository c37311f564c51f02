import { acrossOf, bandsIn, boundsIn, worthSeeing } from "./chart-spans.ts";
import type { Point } from "./path.ts";
import { asSentence, together } from "./text.ts";
import type { Axis, ChartProps, Curve } from "./types.ts";

export const axisName = ({ label, unit }: Axis): string => (unit ? `${label}, ${unit}` : label);

/** The chart as a sentence, for those who do not see it: where each curve begins, turns and ends, and the state. */
export function describeChart(props: ChartProps): string {
  const { title, x, y, curves, state, best } = props;
  const on = ({ unit }: Axis, number: string) => together({ number, unit });
  const at = ([px, py]: Point) => `${on(y, inWords(py))} at ${on(x, inWords(px))}`;
  const onX = (value: number) => on(x, inWords(value));
  const span = acrossOf(props);
  return [
    title,
    `${axisName(y)}, against ${axisName(x)}`,
    ...curves.map((curve) => describeCurve(curve, at)),
    best && `${best.label} at ${onX(best.x)}`,
    state && `Here ${on(y, state.yText)} at ${on(x, state.xText)}`,
    ...bandsIn(props, span).map(({ label, from, to }) => `Shaded from ${onX(from)} to ${onX(to)}: ${label}`),
    ...boundsIn(props, span).map(({ label, x, wrong, at }) =>
      at === undefined
        ? `Hatched throughout, since all of it is ${wrong} ${onX(x)}: ${label}`
        : `Hatched ${wrong} ${onX(x)}: ${label}`,
    ),
  ]
    .filter((text) => text !== undefined)
    .map(asSentence)
    .join(" ");
}

function describeCurve({ label, points }: Curve, at: (point: Point) => string): string {
  const known = worthSeeing(points).map(([x, y]): Point => [x, y]);
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
