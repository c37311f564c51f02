import { r1 } from "../pictures/numbers.ts";
import { Picture, Words } from "../pictures/Picture.tsx";
import type { Size } from "../pictures/shares-layout.ts";
import type { Drawn } from "./draw-job.ts";

interface Props {
  drawn: Drawn;
  /** The ends of the interval of first order, SI. */
  first: readonly [number, number];
  label: string;
  write: (x: number) => string;
}

const sizes: [Size, Size] = [
  { wide: true, width: 800, font: 15 },
  { wide: false, width: 350, font: 14 },
];

const HEIGHT = 130;

/** How the draws fall: bars, with the middle 95 % of them marked under them and that of the first order over them. */
export function Histogram({ drawn, first, label, write }: Props) {
  const { from, to, counts, low, high } = drawn;
  const most = Math.max(...counts);
  if (!(to > from) || most === 0) return null;
  return (
    <Picture
      label={`${label}: how the draws fall. 95 % of them lie between ${write(low)} and ${write(high)}.`}
      sizes={sizes}
      draw={({ width, font }) => {
        const across = (x: number) =>
          4 + ((width - 8) * Math.min(Math.max(x - from, 0), to - from)) / (to - from);
        const step = (width - 8) / counts.length;
        const [top, foot] = [18, 18 + HEIGHT];
        const bars = counts
          .map((count, i) => {
            const h = (HEIGHT * count) / most;
            return `M${r1(4 + i * step)} ${r1(foot)}v${r1(-h)}h${r1(step - 1)}v${r1(h)}z`;
          })
          .join("");
        const span = ([a, b]: readonly [number, number], y: number) =>
          `M${r1(across(a))} ${y - 4}v8m0 -4H${r1(across(b))}m0 -4v8`;
        const drawing = (
          <>
            <path class="bar" d={bars} />
            <path class="axis" d={`M4 ${foot}H${width - 4}`} />
            <path class="outline" d={span(first, top - 10)} />
            <path class="axis" d={span([low, high], foot + 10)} />
            <Words look="second" x={4} y={foot + 22 + font}>
              {write(from)}
            </Words>
            <Words look="second end" x={width - 4} y={foot + 22 + font}>
              {write(to)}
            </Words>
          </>
        );
        return { height: foot + 30 + font, drawing };
      }}
    />
  );
}
