import { r1 } from "./numbers.ts";
import { Picture, Words } from "./Picture.tsx";
import { closed, open, stops } from "./ribbon.ts";
import { layoutStations, narrowSize, type Size, waterLine, wideSize } from "./station-layout.ts";
import { describeStations } from "./station-sentence.ts";
import type { Part, StationDiagramProps } from "./types.ts";

export { describeStations } from "./station-sentence.ts";

/** Air on its way: height is temperature, thickness is the room that one kilogram takes up. */
export const StationDiagram = (props: StationDiagramProps) =>
  props.stations.length > 0 && (
    <Picture
      label={describeStations(props)}
      sizes={[wideSize, narrowSize]}
      draw={(size) => draw(props, size)}
    />
  );

function draw(props: StationDiagramProps, size: Size) {
  const { width, font, left, right, wide } = size;
  const { rail, height, above, below, columns, levels, reach, ...layout } = layoutStations(props, size);
  const temperatures = props.stations.map(({ T }) => T);
  // Two drawings of the same temperatures may share this name: their gradients are the same.
  const fill = `air-${width}-${temperatures.map((T) => Math.round(T * 10)).join("-")}`;

  const drawing = (
    <>
      <Words look="second" x={0} y={16}>
        {props.show.temperatureScale.unit}
      </Words>
      {layout.ticks.map(({ y, text }) => (
        <>
          <path class="grid" d={`M${left - 4} ${r1(y)}H${width}`} />
          <Words look="second end" x={left - 10} y={y + 5}>
            {text}
          </Words>
        </>
      ))}
      {layout.ghostPath.map((corners) => (
        <path class="thin alternative" d={open(corners)} />
      ))}
      {levels.length > 0 && (
        <>
          <linearGradient id={fill} gradientUnits="userSpaceOnUse" x1={left} x2={right}>
            {stops(levels, temperatures, reach).map(({ offset, colour }) => (
              <stop offset={offset} stop-color={colour} />
            ))}
          </linearGradient>
          <path class="air" fill={`url(#${fill})`} d={closed(above, below)} />
          <path class="outline" d={open(above) + open(below)} />
        </>
      )}
      {levels.map(({ x, y, half }) => {
        const h = r1(Math.min(6, Math.max(3, half * 0.6)));
        return (
          <path
            class={half < 5 ? "outline" : "flow"}
            d={`M${r1(x - h / 2)} ${r1(y - h)}l${h} ${h}l${-h} ${h}`}
          />
        );
      })}
      {layout.ghostText && (
        <Words look="second italic end" x={right} y={16}>
          {layout.ghostText}
        </Words>
      )}
      {layout.temperatures.map(({ x, y, number, unit }) => (
        <Words look="middle halo" x={x} y={y}>
          <tspan class="strong" font-size={font + 2}>
            {number}
          </tspan>
          {unit}
        </Words>
      ))}
      <path class="outline" d={`M${left} ${rail}H${right}`} />
      <path class="tip" d={`M${right + 8} ${rail}l-10 -4v8z`} />
      {layout.parts.map(({ kind, foot, x, names, water }) => (
        <>
          <PartDrawing
            kind={kind}
            foot={foot}
            hasWater={water !== undefined}
            x={x}
            y={rail}
            size={layout.part}
          />
          {names.map(({ text, y }) => (
            <Words look="second italic middle" x={x} y={y}>
              {text}
            </Words>
          ))}
          {water?.lines.map((text, i) => (
            <Words
              look={`second${i ? "" : " italic"}${water.isBeside ? "" : " middle"}`}
              x={water.x}
              y={water.y + i * waterLine}
            >
              {text}
            </Words>
          ))}
        </>
      ))}
      {props.stations.map(({ number }, i) => (
        <>
          <circle class="body" cx={r1(columns[i] ?? 0)} cy={rail} r={wide ? 13 : 11} />
          <Words look="middle strong" x={columns[i] ?? 0} y={rail + 5}>
            {number}
          </Words>
        </>
      ))}
      {layout.rows.map(({ symbol, unit, values, y }) => (
        <>
          <path class="grid" d={`M0 ${y}H${width}`} />
          <Words look="second" x={0} y={y + 19}>
            <tspan class={symbol === "ρ" ? "greek" : "italic"}>{symbol}</tspan>
            {unit && `, ${unit}`}
          </Words>
          {values.map((value, i) => (
            <Words look="middle" x={columns[i] ?? 0} y={y + (layout.stacked ? 37 : 19)}>
              {value}
            </Words>
          ))}
        </>
      ))}
    </>
  );
  return { height, drawing };
}

interface PartDrawingProps {
  readonly kind: Part["kind"];
  readonly foot: boolean | undefined;
  readonly hasWater: boolean;
  readonly x: number;
  readonly y: number;
  /** Half of its width and height. */
  readonly size: number;
}

function PartDrawing({ kind, foot, hasWater, x, y, size: s }: PartDrawingProps) {
  const start = `M${r1(x - s)} `;
  const half = s / 2;
  if (kind === "duct") {
    return (
      <>
        <path class="gap" d={`${start}${y - 8}h${2 * s}v16h${-2 * s}z`} />
        <path class="outline" d={`${start}${y - 8}h${2 * s}m0 16h${-2 * s}`} />
      </>
    );
  }
  if (kind === "compressor") {
    return (
      <>
        <path class="body" d={`${start}${y - s}l${2 * s} ${half}v${s}l${-2 * s} ${half}z`} />
        {foot && <path class="outline" d={`M${r1(x)} ${y + 0.75 * s}V${y + s + 7}m-7 0h14`} />}
      </>
    );
  }
  const [out, back] = [r1(x - half), r1(x + half)];
  return (
    <>
      <path class="body" d={`${start}${y - s}h${2 * s}v${2 * s}h${-2 * s}z`} />
      <path
        class="thin"
        d={`${start}${y}h${half}l${s / 4} ${-half}l${half} ${s}l${s / 4} ${-half}h${half}`}
      />
      {hasWater && (
        <>
          <path class="water" d={`M${out} ${y + s + 3}v14M${back} ${y + s + 22}v-14`} />
          <path class="water-tip" d={`M${out} ${y + s + 25}l-3.5 -8h7zM${back} ${y + s + 2}l-3.5 8h7z`} />
        </>
      )}
    </>
  );
}
