import { describeChart } from "./chart-sentence.ts";
import { type FamilyProps, layoutFamily, narrowSize, type Size, wideSize } from "./family-layout.ts";
import { r1 } from "./numbers.ts";
import { Picture, Words } from "./Picture.tsx";

/** A family of curves: each is labelled at its right end, so that neither colour nor dash is needed to tell them apart. */
export const CurveFamily = (props: FamilyProps) => (
  <Picture
    label={describeFamily(props)}
    sizes={[wideSize, narrowSize]}
    draw={(size) => ({ height: size.height, drawing: draw(props, size) })}
  />
);

/** The family as a sentence, for those who do not see it: where each curve begins, turns and ends. */
export const describeFamily = ({ by, curves, ...chart }: FamilyProps): string =>
  describeChart({
    ...chart,
    curves: curves.map(({ label, points, best }) => ({
      label: by === undefined ? label : `${by} = ${label}`,
      points: best ? [...points, best].sort(([a], [b]) => a - b) : points,
    })),
  });

function draw(props: FamilyProps, size: Size) {
  const { width, height } = size;
  const { frame, line, xTitle, yTitle, heading, xTicks, yTicks, curves, labels } = layoutFamily(props, size);
  const { x: left, y: top } = frame;
  const [right, bottom] = [left + frame.w, top + frame.h];

  return (
    <>
      <path
        class="grid"
        d={
          xTicks.map(({ at }) => `M${r1(at)} ${r1(top)}V${r1(bottom)}`).join("") +
          yTicks.map(({ at }) => `M${r1(left)} ${r1(at)}H${r1(right)}`).join("")
        }
      />
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
      {xTicks.map(({ text, at, y }) => (
        <Words look="second middle" x={at} y={y}>
          {text}
        </Words>
      ))}
      {yTicks.map(({ text, at, x }) => (
        <Words look="second end" x={x} y={at + 5}>
          {text}
        </Words>
      ))}
      {curves.map(({ d, dash }) => (
        <path class={`curve ${dash}`} d={d} />
      ))}
      {curves.map(
        ({ cross }) =>
          cross && <path class="outline" d={`M${r1(cross[0] - 5)} ${r1(cross[1] - 5)}l10 10m0 -10l-10 10`} />,
      )}
      <path class="thin" d={labels.map(({ leader }) => leader).join("")} />
      {heading && (
        <Words look="italic" x={heading.x} y={heading.y}>
          {heading.text}
        </Words>
      )}
      {labels.map(({ text, x, y }) => (
        <Words look="" x={x} y={y}>
          {text}
        </Words>
      ))}
    </>
  );
}
