import { HoseDrawing } from "./HoseDrawing.tsx";
import { r1 } from "./numbers.ts";
import { Picture, Words } from "./Picture.tsx";
import { layoutRanking, narrowSize, ranked, type Size, wideSize } from "./ranking-layout.ts";
import { asSentence, together } from "./text.ts";
import type { RankingProps } from "./types.ts";

/** Values on one axis, the best first, and the same as a table. */
export function Ranking(props: RankingProps) {
  const rows = ranked(props);
  const missing = props.rows.filter((row) => !rows.includes(row)).map(({ label }) => label);
  return (
    <>
      {rows.length > 0 && (
        <>
          <Picture
            label={describeRanking(props)}
            sizes={[wideSize, narrowSize]}
            draw={(size) => draw(props, size)}
          />
          <table class="data ranking">
            <caption>
              The same as a table
              {rows.some(({ layout }) => layout) &&
                ", with the hoses: air comes from the left, water is dotted"}
            </caption>
            <tbody>
              {rows.map(({ label, number, layout, isChosen }) => (
                <tr key={label}>
                  <th scope="row">
                    {isChosen ? <b>{label}, chosen</b> : label}
                    {layout && <HoseDrawing layout={layout} isBare />}
                  </th>
                  <td>{together({ number, unit: props.unit })}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      {missing.length > 0 && <p class="msg">Left out, since there is no value: {missing.join("; ")}.</p>}
      {props.note && <p class="msg">{props.note}</p>}
    </>
  );
}

/** The ranking as a sentence: every name and number, the best first. */
export function describeRanking(props: RankingProps): string {
  const places = ranked(props).map(
    ({ label, number, isChosen }) =>
      `${label}${isChosen ? ", the one chosen" : ""}, ${together({ number, unit: props.unit })}`,
  );
  return `${asSentence(props.title)} The best first: ${places.join("; ")}.`;
}

function draw(props: RankingProps, size: Size) {
  const { font, width } = size;
  const { rows, ticks, left, right, foot, height } = layoutRanking(props, size);
  const drawing = (
    <>
      <path class="grid" d={ticks.map(({ x }) => `M${r1(x)} 4V${foot}`).join("")} />
      {rows.map(({ x, y, number, names, isChosen }) => (
        <>
          {names.map((name) => (
            <Words look={isChosen ? "halo strong" : "halo"} x={name.x} y={name.y}>
              {name.text}
            </Words>
          ))}
          <path
            class="leader"
            d={`M${r1(size.wide ? Math.max(0, ...names.map(({ w }) => w)) + 12 : left)} ${r1(y)}H${r1(right + 8)}`}
          />
          <circle class={isChosen ? "state" : "dot"} cx={r1(x)} cy={r1(y)} r={isChosen ? "7" : "5.5"} />
          <Words look="end strong" x={width} y={y + font / 3}>
            {number}
          </Words>
        </>
      ))}
      <path class="axis" d={`M${r1(left)} ${foot}H${r1(right)}`} />
      {ticks.map(
        ({ x, text, shown }) =>
          shown && (
            <Words look="second middle" x={x} y={foot + font + 4}>
              {text}
            </Words>
          ),
      )}
      <Words look="second end" x={width} y={foot + font + 4}>
        {props.unit}
      </Words>
    </>
  );
  return { height, drawing };
}
