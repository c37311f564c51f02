import { type Box, meet } from "./boxes.ts";
import { bandsOf } from "./field-bands.ts";
import { isolineLabels } from "./field-labels.ts";
import { type FieldData, marksOf } from "./field-marks.ts";
import { extraHeight, heightIn, type Panel, panelOf, pointIn, roomAround } from "./field-panel.ts";
import { layoutProfile } from "./field-profile.ts";
import type { Point } from "./path.ts";
import { textWidth, together } from "./text.ts";
import type { Show, TemperatureScale } from "./types.ts";

export interface FieldProps extends FieldData {
  readonly title: string;
  readonly show: Show;
  readonly scale: TemperatureScale;
}

export interface Size {
  readonly wide: boolean;
  readonly width: number;
  readonly font: number;
  /** The core in a panel. */
  readonly w: number;
  readonly h: number;
  /** Left edges of the core in the panels, and of the profile of the leaving air. */
  readonly air: number;
  readonly water: number;
  readonly profile: number;
  readonly profileWidth: number;
}

export const wideSize: Size = {
  wide: true,
  width: 800,
  font: 15,
  w: 240,
  h: 240,
  air: 44,
  profile: 308,
  profileWidth: 136,
  water: 540,
};

export const narrowSize: Size = {
  wide: false,
  width: 350,
  font: 14,
  w: 172,
  h: 180,
  air: 36,
  profile: 228,
  profileWidth: 120,
  water: 36,
};

/** Where the parts of a field drawing stand. */
export function layoutField(props: FieldProps, size: Size) {
  const { layout, field, scale, show } = props;
  const { font, wide } = size;
  const marks = marksOf(props);
  const { over, under } = roomAround(layout);
  const top = font + 13 + over;
  const h = size.h + extraHeight(layout);
  const each = top + h + under + 10;
  const panels = (["air", "water"] as const).map((stream): Panel => {
    const y = stream === "water" && !wide ? each + font + top : top;
    return panelOf(stream, { x: size[stream], y, w: size.w, h }, layout, field);
  }) as [Panel, Panel];
  const [air, water] = panels;

  const ends = water.hoses.ends.map(({ leads, at: [x, y], side, word }) => {
    const name = leads === "in" ? "water in" : "out";
    const number = together(show(leads === "in" ? props.cold : marks.waterOut));
    const w = Math.max(textWidth(name, font), textWidth(number, font)) + 9;
    const isRight = word === "right" ? x + w <= size.width : x - w < 0;
    return {
      name,
      number,
      x: x + (isRight ? 9 : -9),
      y: side === "top" ? y + font - 3 : y - 12,
      look: isRight ? "" : "end",
    };
  });

  const taken: Box[] = water.hoses.waterTips.map(({ at: [x, y] }) => ({ x: x - 6, y: y - 10, w: 12, h: 20 }));
  const { hotEnd } = marks;
  // Between two arrows of air where every height is as warm.
  const hotAt = hotEnd.isWholeHeight ? 2 / 3 : hotEnd.y;
  const flags = panels.map(({ core, banks, stream }) => {
    const at = pointIn(banks[hotEnd.bank], field.banks[hotEnd.bank], [hotEnd.x, hotAt]);
    const text = `hot end ${show(hotEnd[stream]).number}`;
    const body = { ...core, y: banks[hotEnd.bank]?.y ?? core.y, h: banks[hotEnd.bank]?.h ?? core.h };
    const box = beside(at, { w: textWidth(text, font, true), h: font + 3 }, body, taken);
    taken.push(box, { x: at[0] - 8, y: at[1] - 8, w: 16, h: 16 });
    return { at, text, x: box.x, y: box.y + font - 1 };
  });
  const drawn = panels.map((panel) => bandsOf(props, panel, scale));

  return {
    height: wide ? each : 2 * each + font,
    panels,
    bands: drawn.flatMap(({ bands }) => bands),
    labels: isolineLabels(
      drawn.flatMap(({ isolines }) => isolines),
      font,
      taken,
    ),
    flags,
    ends,
    profile: layoutProfile(
      { marks, show, scale, heightAt: (y) => heightIn(air, y, field.banks) },
      { x: size.profile, y: air.core.y, w: size.profileWidth, h },
      font,
    ),
    header: headerLabel(props, air, font),
    headings: [
      { x: air.core.x, y: font, name: "Air", says: ` in at ${together(show(props.hot))}` },
      { x: size.profile, y: font, name: "", says: `leaving, ${scale.unit}` },
      { x: water.core.x, y: water.core.y - top + font, name: "Water", says: "" },
    ],
  };
}

/** The name of the tank in which the water turns, where it fits. */
function headerLabel({ layout }: FieldProps, { hoses, core }: Panel, font: number) {
  const turns = layout.kind === "across" && layout.passes > 1 && layout.next === "back";
  const text = turns && layout.passes > 2 ? "return headers" : "return header";
  const tanks = hoses.tanks.filter(({ y }) => y < core.y);
  const widest = tanks.sort((a, b) => b.w - a.w)[0];
  if (!turns || !widest || widest.w < textWidth(text, font) + 4) return undefined;
  return { text, x: widest.x + widest.w / 2, y: widest.y + widest.h - 4 };
}

/** A place for a text beside a mark: within the core, off the mark, and off what stands there if that can be. */
function beside([x, y]: Point, { w, h }: Pick<Box, "w" | "h">, core: Box, taken: readonly Box[]): Box {
  const mark: Box = { x: x - 7, y: y - 7, w: 14, h: 14 };
  const held = (at: number, from: number, span: number, part: number) =>
    Math.max(from + 4, Math.min(from + span - part - 4, at));
  const places = [
    [x + 11, y - h / 2],
    [x - 11 - w, y - h / 2],
    [x - w / 2, y - 11 - h],
    [x - w / 2, y + 11],
    [x + 11, y - 2 * h],
    [x + 11, y + h],
  ]
    .map(
      ([px = 0, py = 0]): Box => ({
        x: held(px, core.x, core.w, w),
        y: held(py, core.y, core.h, h),
        w,
        h,
      }),
    )
    .filter((box) => !meet(box, mark));
  return places.find((box) => !taken.some((other) => meet(box, other))) ?? places[0] ?? { x, y, w, h };
}
