import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Box } from "./boxes.ts";
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
  const mean = `mean ${show(airOut).number}`;
  const held = (x: number, half: number) => Math.max(frame.x + half, Math.min(frame.x + frame.w - half, x));
  return {
    frame,
    ticks: niceMarks(scale.shown(from), scale.shown(to), 3)
      .map(({ value, text }) => ({ text, x: across(scale.kelvin(value)) }))
      .filter(({ text, x }) => x === held(x, textWidth(text, font) / 2)),
    lines: parts.map((part) => part.map(({ T, y }): Point => [across(T), heightAt(y)])),
    mean: { x: across(airOut), text: mean, textX: held(across(airOut), textWidth(mean, font) / 2) },
    labels: isEven ? [] : [label("hottest", hottest), label("coolest", coolest)],
  };
}
