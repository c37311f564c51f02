import { head } from "../../widgets/pictures/arrows.ts";
import { r1 } from "../../widgets/pictures/numbers.ts";
import { Picture } from "../../widgets/pictures/Picture.tsx";
import { hatch } from "../../widgets/pictures/path.ts";
import {
  describeLadder,
  type Ladder,
  type Look,
  layoutLadder,
  narrowSize,
  type Size,
  wideSize,
} from "./ladder-layout.ts";
import { PlacedTexts } from "./placed-text.tsx";

/** The pressures on the path of the air as rungs of one ladder that stands on empty space. */
export const PressureLadder = (ladder: Ladder) => (
  <Picture
    label={describeLadder(ladder)}
    sizes={[wideSize, narrowSize]}
    draw={(size) => ({ height: layoutLadder(ladder, size).height, drawing: draw(ladder, size) })}
  />
);

const looks: Readonly<Record<Look, string>> = {
  value: "halo strong",
  note: "halo",
  name: "second",
  mark: "second",
};

/** An upright dimension line: a thin line with an arrowhead at each end that it measures to. */
const dimension = ({ x, from, to }: { x: number; from: number; to: number }) => (
  <>
    <path class="thin" d={`M${r1(x)} ${r1(from)}V${r1(to)}`} />
    <path class="tip" d={head({ at: [x, to], to: [0, -1] }, 8, 3)} />
    <path class="tip" d={head({ at: [x, from], to: [0, 1] }, 8, 3)} />
  </>
);

function draw(ladder: Ladder, size: Size) {
  const { left, right, foot, top, steps, barometer, at, firstMarks, otherMarks, texts } = layoutLadder(
    ladder,
    size,
  );
  const ground = { x: left, y: foot, w: right - left, h: 6 };
  const ladderLine = steps
    .map(({ from, to, y }, i) => `${i ? `V${r1(y)}` : `M${r1(from)} ${r1(y)}`}H${r1(to)}`)
    .join("");
  return (
    <>
      <path class="grid" d={firstMarks.map(({ y }) => `M${r1(left)} ${r1(y)}H${r1(right)}`).join("")} />
      <path class="axis" d={`M${r1(left)} ${r1(top)}V${r1(foot)}M${r1(right)} ${r1(top)}V${r1(foot)}`} />
      <path class="axis" d={otherMarks.map(({ y }) => `M${r1(right)} ${r1(y)}h-5`).join("")} />
      <path class="hatch" d={hatch(ground, 5)} />
      <path class="outline" d={`M${r1(left)} ${r1(foot)}H${r1(right)}`} />
      <path class="drop" d={`M${r1(left)} ${r1(barometer)}H${r1(right)}`} />
      <path class="curve" d={ladderLine} />
      {dimension(at.gauge)}
      {dimension(at.absolute)}
      <PlacedTexts texts={texts} font={size.font} looks={looks} />
    </>
  );
}
