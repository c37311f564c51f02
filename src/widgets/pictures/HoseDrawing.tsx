import type { Layout } from "../../../calc/exchanger/layout.ts";
import { head, stir, stirHead } from "./arrows.ts";
import { layoutHoses, size } from "./hose-layout.ts";
import { describeHoses } from "./hose-sentence.ts";
import { dome } from "./hose-shells.ts";
import { r1 } from "./numbers.ts";
import { Words } from "./Picture.tsx";
import { polyline } from "./path.ts";

export { describeHoses } from "./hose-sentence.ts";

interface HoseProps {
  readonly layout: Layout;
  /** Its name and sentence stand beside it, and are then not read out twice. */
  readonly name?: string;
  /** Smaller and without words, for a table whose caption says which line is which. */
  readonly isBare?: boolean;
}

/** Where the hoses of a cooler go: air from the left, water dotted. A small drawing for lists, tables and choices. */
export function HoseDrawing({ layout, name, isBare = false }: HoseProps) {
  const { cores, tanks, shells, plates, bounds, water, waterTips, air, stirs, words } = layoutHoses(layout);
  const says = describeHoses(layout);
  const drawing = (
    <div class={isBare ? "picture hoses bare" : "picture hoses"}>
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        width={size.width}
        height={size.height}
        font-size={size.font}
        role="img"
        aria-label={says}
        aria-hidden={name !== undefined}
      >
        <path
          class="body"
          d={
            cores.map((core) => `${polyline(core)}z`).join("") +
            tanks.map(({ x, y, w, h }) => `M${r1(x)} ${r1(y)}h${r1(w)}v${h}h${r1(-w)}z`).join("") +
            shells
              .map(
                ({ x, y, w, h }) =>
                  `M${r1(x)} ${y + h}v${dome - h}a${r1(w / 2)} ${dome} 0 0 1 ${r1(w)} 0v${h - dome}z`,
              )
              .join("")
          }
        />
        <path class="thin" d={plates.map(polyline).join("")} />
        {bounds.length > 0 && <path class="hidden-edge" d={bounds.map(polyline).join("")} />}
        <path class="water" d={water.map(polyline).join("")} />
        <path class="water-tip" d={waterTips.map((tip) => head(tip, 7, 3.5)).join("")} />
        <path
          class="outline"
          d={air.map(([from, [x, y]]) => polyline([from, [x - 6, y]])).join("") + stirs.map(stir).join("")}
        />
        <path
          class="tip"
          d={air.map(([, at]) => head({ at, to: [1, 0] }, 9, 3.5)).join("") + stirs.map(stirHead).join("")}
        />
        {(isBare ? [] : words).map(({ text, x, y, look }) => (
          <Words look={`second italic ${look}`.trim()} x={x} y={y}>
            {text}
          </Words>
        ))}
      </svg>
    </div>
  );
  if (name === undefined) return drawing;
  return (
    <>
      {drawing}
      <p class="msg">
        <b>{name}.</b> {says}
      </p>
    </>
  );
}
