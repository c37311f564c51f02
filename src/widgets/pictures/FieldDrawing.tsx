import { head, stir, stirHead } from "./arrows.ts";
import type { Box } from "./boxes.ts";
import { type FieldProps, layoutField, narrowSize, type Size, wideSize } from "./field-layout.ts";
import type { Panel } from "./field-panel.ts";
import { describeField } from "./field-sentence.ts";
import { r1 } from "./numbers.ts";
import { Picture, Words } from "./Picture.tsx";
import { type Point, polyline } from "./path.ts";

export { describeField } from "./field-sentence.ts";

/** Temperatures of air and water over the core, seen from the side, and of the air that leaves it. */
export const FieldDrawing = (props: FieldProps) => (
  <Picture
    label={`${props.title} ${describeField(props, props.show)}`}
    sizes={[wideSize, narrowSize]}
    draw={(size) => draw(props, size)}
  />
);

const ring = (points: readonly Point[]) => `${polyline(points)}z`;
const rect = ({ x, y, w, h }: Box) => `M${r1(x)} ${r1(y)}h${r1(w)}v${r1(h)}h${r1(-w)}z`;

function draw(props: FieldProps, size: Size) {
  const { font } = size;
  const { height, panels, bands, labels, flags, ends, profile, header, headings } = layoutField(props, size);
  const drawing = (
    <>
      {headings.map(({ name, says, x, y }) => (
        <Words look="" x={x} y={y}>
          {name && <tspan class="strong">{name}</tspan>}
          {says}
        </Words>
      ))}
      {bands.map(({ colour, rings }) => (
        <path class="band" fill={colour} d={rings.map(ring).join("")} />
      ))}
      {panels.map((panel) => (
        <Core {...panel} />
      ))}
      {header && (
        <Words look="second italic middle" x={header.x} y={header.y}>
          {header.text}
        </Words>
      )}
      {labels.map(({ text, x, y, w }) => (
        <Words look="middle halo" x={x + w / 2} y={y + font - 2}>
          {text}
        </Words>
      ))}
      {flags.map(({ text, x, y, at }) => (
        <>
          <path class="hot" d={`M${r1(at[0])} ${r1(at[1] - 6)}l6 6l-6 6l-6-6z`} />
          <Words look="strong halo" x={x} y={y}>
            {text}
          </Words>
        </>
      ))}
      {ends.map(({ name, number, x, y, look }) => (
        <>
          <Words look={`second italic ${look}`} x={x} y={y}>
            {name}
          </Words>
          <Words look={look} x={x} y={y + font + 2}>
            {number}
          </Words>
        </>
      ))}
      <Profile {...profile} font={font} />
    </>
  );
  return { height, drawing };
}

/** What stands over the bands: tubes, banks, core, tanks, and arrows of air. */
function Core({ stream, core, banks, hoses, winds }: Panel) {
  const water = hoses.water.map(polyline).join("");
  const isAir = stream === "air";
  const end = core.x + core.w;
  const stirs = isAir
    ? hoses.stirs.filter(([x]) => banks.every((bank) => x < bank.x || x > bank.x + bank.w))
    : [];
  const shafts = winds.map((y) => `M${core.x - 32} ${r1(y)}h22${isAir ? `M${end + 4} ${r1(y)}h8` : ""}`);
  const tips = winds.flatMap((y) =>
    (isAir ? [core.x - 4, end + 18] : [core.x - 4]).map((x): Point => [x, y]),
  );
  return (
    <>
      {!isAir && <path class="casing" d={water} />}
      <path class="thin" d={banks.map(rect).join("")} />
      <path class="outline" d={hoses.cores.map(ring).join("")} />
      <path class="body" d={hoses.tanks.map(rect).join("")} />
      {!isAir && (
        <>
          <path class="water" d={water} />
          <path class="water-tip" d={hoses.waterTips.map((tip) => head(tip, 9, 4)).join("")} />
        </>
      )}
      <path class="outline" d={shafts.join("") + stirs.map(stir).join("")} />
      <path
        class="tip"
        d={tips.map((at) => head({ at, to: [1, 0] }, 9, 3.5)).join("") + stirs.map(stirHead).join("")}
      />
    </>
  );
}

type ProfileProps = ReturnType<typeof layoutField>["profile"] & { readonly font: number };

/** The temperature of the leaving air at each height. */
function Profile({ frame, ticks, lines, mean, labels, font }: ProfileProps) {
  const foot = frame.y + frame.h;
  return (
    <>
      <path class="grid" d={ticks.map(({ x }) => `M${r1(x)} ${r1(frame.y)}V${r1(foot)}`).join("")} />
      <path class="axis" d={`M${frame.x} ${r1(foot)}h${frame.w}`} />
      {ticks.map(({ x, text }) => (
        <Words look="second middle" x={x} y={foot + font + 3}>
          {text}
        </Words>
      ))}
      <path class="thin alternative" d={`M${r1(mean.x)} ${r1(frame.y)}V${r1(foot)}`} />
      {lines.map((line) => (
        <path class="curve solid" d={polyline(line)} />
      ))}
      <Words look="middle halo" x={mean.textX} y={mean.textY}>
        {mean.text}
      </Words>
      {labels.map(({ at, text, x, y, look }) => (
        <>
          <circle class="tip" cx={r1(at[0])} cy={r1(at[1])} r="4" />
          <Words look={`halo ${look}`} x={x} y={y}>
            {text}
          </Words>
        </>
      ))}
    </>
  );
}
