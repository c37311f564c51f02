import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type Box, meet } from "./boxes.ts";
import type { FieldMarks, Stripe } from "./field-marks.ts";
import { niceMarks } from "./numbers.ts";
import type { Point } from "./path.ts";
import { textWidth } from "./text.ts";
import type { Show, TemperatureScale } from "./types.ts";

interface ProfileProps {
  readonly marks: FieldMarks;
  readonly show: Show;
  readonly scale: TemperatureScale;
  /** Where a height of the face stands in the panel beside. */
  readonly heightAt: (y: number) => number;
}

/** No smaller span fills the width, so that small differences look small. */
const leastSpan: SI = 10;

/** From a mark to its text. */
const beside = 9;

/** Of the span, on both sides of it. */
const spare = 0.14;

/** Temperature of the leaving air along the height of the face, on a scale of its own. */
export function layoutProfile({ marks, show, scale, heightAt }: ProfileProps, frame: Box, font: number) {
  const { parts, hottest, coolest, isEven, airOut } = marks;
  const [low, high] = [Math.min(coolest.T, airOut), Math.max(hottest.T, airOut)];
  const span = Math.max(leastSpan, high - low);
  const from = (low + high - span) / 2 - spare * span;
  const perKelvin = frame.w / (span * (1 + 2 * spare));
  const across = (T: SI) => frame.x + (T - from) * perKelvin;
  const to = from + frame.w / perKelvin;

  const label = (word: string, { T, y }: Stripe) => {
    const at: Point = [across(T), heightAt(y)];
    const text = `${word} ${show(T).number}`;
    const w = textWidth(text, font) + beside;
    const [before, after] = [at[0] - frame.x, frame.x + frame.w - at[0]];
    const isLeft = before > after;
    // Where neither side has room, the text stands under the mark, or over it.
    const isBeside = Math.max(before, after) >= w;
    const isHigh = at[1] < frame.y + frame.h / 2;
    const clear = isBeside ? font / 3 : isHigh ? font + beside : -beside;
    return {
      at,
      text,
      x: isBeside ? at[0] + (isLeft ? -beside : beside) : frame.x + (isLeft ? 0 : frame.w),
      y: Math.min(frame.y + frame.h - 5, Math.max(frame.y + font, at[1] + clear)),
      look: isBeside === isLeft ? "end" : "",
    };
  };
  const held = (x: number, half: number) => Math.max(frame.x + half, Math.min(frame.x + frame.w - half, x));
  const labels = isEven ? [] : [label("hottest", hottest), label("coolest", coolest)];
  return {
    frame,
    ticks: niceMarks(scale.shown(from), scale.shown(to), 3)
      .map(({ value, text }) => ({ text, x: across(scale.kelvin(value)) }))
      .filter(({ text, x }) => x === held(x, textWidth(text, font) / 2)),
    lines: parts.map((part) => part.map(({ T, y }): Point => [across(T), heightAt(y)])),
    mean: meanLabel(`mean ${show(airOut).number}`, across(airOut), labels, frame, font),
    labels,
  };
}

/** The mean stands over its line; but beside it where the mark of a stripe would seem to be what it names. */
function meanLabel(
  text: string,
  x: number,
  labels: readonly { at: Point; text: string; x: number; y: number; look: string }[],
  frame: Box,
  font: number,
) {
  const w = textWidth(text, font);
  const over = Math.max(frame.x + w / 2, Math.min(frame.x + frame.w - w / 2, x));
  const isTaken = labels.some(({ at }) => at[1] < frame.y + 2 * font && Math.abs(at[0] - x) < 1.5 * beside);
  if (!isTaken) return { x, text, textX: over, textY: frame.y - 5 };
  const left = x - beside - w;
  const boxes = labels.map((one): Box => {
    const wide = textWidth(one.text, font);
    return { x: one.look === "end" ? one.x - wide : one.x, y: one.y - font, w: wide, h: font + 4 };
  });
  const isFree = (y: number) => !boxes.some((box) => meet(box, { x: left, y: y - font, w, h: font + 4 }));
  // Between the arrows of air that leave the core beside.
  const heights = [1 / 3, 2 / 3].map((share) => frame.y + share * frame.h + font / 3);
  const free = heights.find(isFree);
  return free === undefined
    ? { x, text, textX: over, textY: frame.y - 5 }
    : { x, text, textX: left + w / 2, textY: free };
}
