import { head } from "../../widgets/pictures/arrows.ts";
import { r1 } from "../../widgets/pictures/numbers.ts";
import { Picture, Words } from "../../widgets/pictures/Picture.tsx";
import { polyline } from "../../widgets/pictures/path.ts";
import { type Frame, narrowFrame, wideFrame } from "./cutaway/frame.ts";
import {
  type CutawayNumbers,
  type LabelName,
  type LabelsWanted,
  labelNames,
  placeLabels,
} from "./cutaway/labels.ts";
import { cutaway } from "./cutaway/pieces.ts";
import { describeCutaway } from "./cutaway/sentence.ts";
import { type Hoses, streams } from "./cutaway/streams.ts";

export interface TwoPassCutawayProps {
  /** Which names stand at the drawing; all where left out. Water is always named. */
  readonly labels?: readonly LabelName[] | undefined;
  readonly hoses?: Hoses | undefined;
  readonly numbers?: CutawayNumbers | undefined;
}

/** A water-fed charge cooler of two passes, cut along its middle: where air and water go, and what its parts are called. */
export function TwoPassCutaway({ labels = labelNames, hoses = "right", numbers = {} }: TwoPassCutawayProps) {
  const wanted = { labels, hoses, numbers };
  return (
    <Picture
      label={describeCutaway(wanted)}
      sizes={[wideFrame, narrowFrame]}
      draw={(frame) => draw(frame, wanted)}
    />
  );
}

/** Lines at 45°, 5 apart, one way and the other: parts that touch are hatched differently. */
const hatches = [45, -45] as const;

function draw(frame: Frame, wanted: LabelsWanted) {
  const { water, waterTips, air, airTips } = streams(frame, wanted.hoses);
  const labels = placeLabels(frame, wanted);
  // A hatch that stands in a drawing which is not shown draws nothing: each drawing has its own.
  const hatch = (way: number) => `cut-${frame.width}-${wanted.hoses}-${way}`;
  const drawing = (
    <>
      {hatches.map((turn, i) => (
        <pattern
          id={hatch(i + 1)}
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform={`rotate(${turn})`}
        >
          <path class="thin" d="M2.5 0v5" />
        </pattern>
      ))}
      {cutaway(frame).map(({ look, d, cut }) => (
        <>
          <path class={look} d={d} {...(look === "thin" && { "stroke-opacity": 0.7 })} />
          {cut && <path fill={`url(#${hatch(cut)})`} d={d} />}
        </>
      ))}
      <path class="outline" d={air.join("")} />
      <path class="tip" d={airTips.map((tip) => head(tip, 10, 4)).join("")} />
      <path class="water" d={water.join("")} />
      <path class="water-tip" d={waterTips.map((tip) => head(tip, 8, 3.5)).join("")} />
      {labels.map(
        ({ leader }) =>
          leader && (
            <>
              <path class="thin" d={polyline(leader)} />
              <circle class="tip" cx={r1(leader[1][0])} cy={r1(leader[1][1])} r="2" />
            </>
          ),
      )}
      {labels.flatMap(({ x, anchor, lines }) =>
        lines.map(({ text, y, isNumber }) => (
          <Words look={`halo ${anchor}${isNumber ? " strong" : ""}`} x={x} y={y}>
            {text}
          </Words>
        )),
      )}
    </>
  );
  return { height: frame.height, drawing };
}
