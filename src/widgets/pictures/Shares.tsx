import type { Box } from "./boxes.ts";
import { r1 } from "./numbers.ts";
import { Picture, Words } from "./Picture.tsx";
import { hatch } from "./path.ts";
import { counted, layoutShares, narrowSize, type Size, wideSize, written } from "./shares-layout.ts";
import { describeShares } from "./shares-sentence.ts";
import type { SharesProps } from "./types.ts";

/** Bars of the parts of a sum, each from where the one before ended, and the same as a table for those who do not see it. */
export function Shares(props: SharesProps) {
  const { parts, sum, isSigned } = counted(props);
  return (
    <>
      {parts.length > 0 && (
        <>
          <Picture
            label={describeShares(props)}
            sizes={[wideSize, narrowSize]}
            draw={(size) => draw(props, size)}
          />
          <div class="hidden">
            <table>
              <caption>{props.title}</caption>
              <tbody>
                {[...parts, ...(sum ? [sum] : [])].map((share) => (
                  <tr key={share.label}>
                    <th scope="row">{share.label}</th>
                    <td>{written(share, props.unit, isSigned && share !== sum)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
      {parts.length === 0 && <p class="msg">There is nothing to add up at this state.</p>}
      {props.note && <p class="msg">{props.note}</p>}
    </>
  );
}

const outline = ({ x, y, w, h }: Box) => `M${r1(x)} ${r1(y)}h${r1(w)}v${r1(h)}h${-r1(w)}z`;

function draw(props: SharesProps, size: Size) {
  const { bars, joins, zero, foot, height } = layoutShares(props, size);
  const isClear = ({ x, w }: { x: number; w: number }) => zero < x - 3 || zero > x + w;
  const upright = size.wide
    ? `M${r1(zero)} 0V${r1(foot)}`
    : bars
        .map(({ box, number }) => (isClear(number) ? `M${r1(zero)} ${r1(box.y - 3)}v${box.h + 6}` : ""))
        .join("");
  const drawing = (
    <>
      <path class="drop" d={joins.map(({ x, y, h }) => `M${r1(x)} ${r1(y)}v${r1(h)}`).join("")} />
      {bars.map(({ box, isSum, isLoss, rule }) => (
        <>
          {rule !== undefined && <path class="outline" d={`M0 ${r1(rule)}H${size.width}`} />}
          <path class={`bar ${isLoss ? "loss" : isSum ? "whole" : ""}`} d={outline(box)} />
          {isLoss && box.w > 2 && <path class="hatch" d={hatch(box, 4)} />}
        </>
      ))}
      <path class="axis" d={upright} />
      {bars.map(({ text, number, names, isSum }) => (
        <>
          {names.map((name) => (
            <Words look={isSum ? "halo strong" : "halo"} x={0} y={name.y}>
              {name.text}
            </Words>
          ))}
          <Words look={isSum ? "halo strong" : "halo"} x={number.x} y={number.y}>
            {text}
          </Words>
        </>
      ))}
      <Words look="second middle" x={Math.max(4, zero)} y={foot + size.font + 2}>
        0
      </Words>
    </>
  );
  return { height, drawing };
}
