import { head } from "../../widgets/pictures/arrows.ts";
import { r1 } from "../../widgets/pictures/numbers.ts";
import { Picture } from "../../widgets/pictures/Picture.tsx";
import { type Point as Pixel, polyline, thin } from "../../widgets/pictures/path.ts";
import { PlacedTexts } from "./placed-text.tsx";
import {
  describeTs,
  type Look,
  layoutTs,
  narrowSize,
  type Size,
  type TwoStages,
  wideSize,
} from "./ts-layout.ts";

/** Two stages on a diagram of temperature against entropy. */
export const TwoStageTs = (stages: TwoStages) => (
  <Picture
    label={describeTs(stages)}
    sizes={[wideSize, narrowSize]}
    draw={(size) => ({ height: size.height, drawing: draw(stages, size) })}
  />
);

const looks: Readonly<Record<Look, string>> = {
  value: "halo strong",
  mark: "second",
  italic: "halo second italic",
};

/** An arrowhead half-way along a line. */
function flow(line: readonly Pixel[]): string {
  const i = Math.max(1, Math.round(line.length / 2));
  const [a, b] = [line[i - 1] as Pixel, line[i] as Pixel];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const to: Pixel = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const middle: Pixel = [(a[0] + b[0]) / 2 + 5 * to[0], (a[1] + b[1]) / 2 + 5 * to[1]];
  return head({ at: middle, to }, 10, 4);
}

function draw(stages: TwoStages, size: Size) {
  const { frame, xMarks, yMarks, levels, ideals, compressions, alone, coolings, spots, texts } = layoutTs(
    stages,
    size,
  );
  const [right, foot] = [frame.x + frame.w, frame.y + frame.h];
  const lines = [compressions[0], coolings[0], compressions[1], coolings[1]];
  return (
    <>
      <path class="grid" d={yMarks.map(({ at }) => `M${r1(frame.x)} ${r1(at)}H${r1(right)}`).join("")} />
      <path class="axis" d={`M${r1(frame.x)} ${r1(frame.y)}V${r1(foot)}H${r1(right)}`} />
      <path class="axis" d={xMarks.map(({ at }) => `M${r1(at)} ${r1(foot)}v5`).join("")} />
      <path class="thin" d={levels.join("")} />
      <path class="curve ideal" d={ideals.join("")} />
      <path class="curve alternative" d={polyline(alone)} />
      {lines.map((line, i) => (
        <path key={i} class="curve" d={polyline(thin(line, 0.2))} />
      ))}
      <path class="tip" d={lines.map(flow).join("")} />
      {spots.map(([x, y], i) => (
        <g key={r1(x)}>
          <circle class="state" cx={r1(x)} cy={r1(y)} r="9" />
          <text class="middle strong" x={r1(x)} y={r1(y + 5)}>
            {i + 1}
          </text>
        </g>
      ))}
      <PlacedTexts texts={texts} font={size.font} looks={looks} />
    </>
  );
}
