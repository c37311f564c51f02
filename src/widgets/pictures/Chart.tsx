import { layoutChart, narrowSize, type Size, wideSize } from "./chart-layout.ts";
import { describeChart } from "./chart-sentence.ts";
import { r1 } from "./numbers.ts";
import { Picture, Words } from "./Picture.tsx";
import { hatch } from "./path.ts";
import type { ChartProps } from "./types.ts";

export { describeChart } from "./chart-sentence.ts";

/** Curves over two axes, the state at hand as a ring, bands shaded, what is out of bounds hatched. */
export const Chart = (props: ChartProps) => (
  <Picture
    label={describeChart(props)}
    sizes={props.isSmall ? [narrowSize] : [wideSize, narrowSize]}
    draw={(size) => ({ height: size.height, drawing: draw(props, size) })}
  />
);

function draw(props: ChartProps, size: Size) {
  const { width, height, font } = size;
  const { frame, line, xTitle, yTitle, xTicks, yTicks, ring, cross, spans, ...chart } = layoutChart(
    props,
    size,
  );
  const { x: left, y: top } = frame;
  const [right, bottom] = [left + frame.w, top + frame.h];

  const upright = (xs: readonly number[]) => xs.map((x) => `M${r1(x)} ${r1(top)}V${r1(bottom)}`).join("");

  return (
    <>
      {spans.bands.map(({ box: { x, w } }) => (
        <>
          <rect class="shade" x={r1(x)} y={r1(top)} width={r1(w)} height={r1(frame.h)} />
          <path class="thin" d={upright([x, x + w].filter((at) => at > left + 1 && at < right - 1))} />
        </>
      ))}
      <path
        class="grid"
        d={
          upright(xTicks.map(({ at }) => at)) +
          yTicks.map(({ at }) => `M${r1(left)} ${r1(at)}H${r1(right)}`).join("")
        }
      />
      {spans.hatched.map((box) => (
        <path class="hatch" d={hatch(box, 7)} />
      ))}
      <path class="outline" d={upright(spans.bounds.flatMap(({ edge, isHere }) => (isHere ? [edge] : [])))} />
      <path class="axis" d={`M${r1(left)} ${r1(top)}V${r1(bottom)}H${r1(right)}`} />
      {yTitle.map((text, i) => (
        <Words look="second" x={0} y={16 + i * line}>
          {text}
        </Words>
      ))}
      {xTitle.map((text, i) => (
        <Words look="second end" x={width} y={height - 6 - (xTitle.length - 1 - i) * line}>
          {text}
        </Words>
      ))}
      {[...xTicks, ...yTicks].map(
        ({ shown, text, x, y, w }) =>
          shown && (
            <Words look="second middle" x={x + w / 2} y={y + font - 1}>
              {text}
            </Words>
          ),
      )}
      {chart.curves.map(({ d, dash }) => (
        <path class={`curve ${dash}`} d={d} />
      ))}
      {cross && <path class="outline" d={`M${r1(cross[0] - 5)} ${r1(cross[1] - 5)}l10 10m0 -10l-10 10`} />}
      {chart.labels.map(({ lines, x, y, w, italic, endsTogether }) =>
        lines.map((text, i) => (
          <Words
            look={`halo${italic ? " italic" : ""}${endsTogether ? " end" : ""}`}
            x={endsTogether ? x + w : x}
            y={y + font - 1 + i * line}
          >
            {text}
          </Words>
        )),
      )}
      {ring && (
        <>
          <path class="drop" d={`M${r1(ring[0])} ${r1(bottom)}V${r1(ring[1])}H${r1(left)}`} />
          <circle class="state" cx={r1(ring[0])} cy={r1(ring[1])} r="6" />
        </>
      )}
      {chart.flags.map(({ text, x, y, w, h }) => (
        <>
          <rect class="flag" x={r1(x)} y={r1(y)} width={r1(w)} height={h} rx="1" />
          <Words look="middle strong on-flag" x={x + w / 2} y={y + 16.5}>
            {text}
          </Words>
        </>
      ))}
    </>
  );
}
