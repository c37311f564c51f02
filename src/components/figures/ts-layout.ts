import type { SI } from "../../../calc/quantity/domain-error.ts";
import { fromSI, toSI } from "../../../calc/quantity/units.ts";
import { niceMarks } from "../../widgets/pictures/numbers.ts";
import { type Point as Pixel, polyline } from "../../widgets/pictures/path.ts";
import { textWidth } from "../../widgets/pictures/text.ts";
import { textWriter } from "./placed-text.tsx";
import { course, entropyAbove, idealEnd, isobar, type Point, type State } from "./ts-path.ts";

/** Two compressors, each with a cooler behind it, between five places; and one compressor that does it alone. */
export interface TwoStages {
  readonly places: readonly [State, State, State, State, State];
  readonly alone: State;
  /** Pressures of the curves of one pressure, as printed: at the inlet, between the compressors, behind them. */
  readonly pressures: readonly [string, string, string];
  /** Temperatures at the five places, and of the one alone, as printed. */
  readonly temperatures: readonly [string, string, string, string, string];
  readonly aloneAt: string;
}

export interface Size {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly across: number;
}

export const wideSize: Size = { width: 760, height: 440, font: 15, across: 6 };
export const narrowSize: Size = { width: 350, height: 430, font: 14, across: 3 };

export type Look = "value" | "mark" | "italic";

const celsius = (T: SI): number => fromSI(T, "degC");
const kelvin = (t: number): SI => toSI(t, "degC");

/** Where everything of the diagram stands, in pixels from the left top corner. */
export function layoutTs(stages: TwoStages, { width, height, font, across }: Size) {
  const { places, alone, pressures, temperatures, aloneAt } = stages;
  const [one, two, three, four, five] = places;
  const point = (place: State): Point => ({ s: entropyAbove(one, place), T: place.T });
  const points = places.map(point);
  const ideals = [
    [point(one), idealEnd(one, one, two.p)],
    [point(three), idealEnd(one, three, four.p)],
  ] as const;

  const all = [...points, point(alone), ...ideals.flat()];
  const least = Math.min(...all.map(({ s }) => s));
  const most = Math.max(...all.map(({ s }) => s));
  const room = 0.14 * (most - least);
  const span = {
    s: [least - room, most + 1.6 * room],
    T: [0, Math.max(...all.map(({ T }) => celsius(T))) + 24],
  } as const;

  const left = textWidth("000", font) + 12;
  const right = width - 4;
  const top = 1.7 * font + 8;
  const foot = height - 2.9 * font - 10;
  const at = ({ s, T }: Point): Pixel => [
    left + ((right - left) * (s - span.s[0])) / (span.s[1] - span.s[0]),
    foot - ((foot - top) * (celsius(T) - span.T[0])) / (span.T[1] - span.T[0]),
  ];

  const { texts, write } = textWriter<Look>(font);

  // A curve of one pressure, as far as it lies in the frame; its pressure stands at its upper end.
  const levels = [one.p, two.p, four.p].map((p, i) => {
    const inside = isobar(one, p, kelvin(span.T[0]), kelvin(span.T[1]), 60)
      .map(at)
      .filter(([x]) => x >= left && x <= right);
    const [x, y] = inside.at(-1) ?? [right, top];
    const words = pressures[i] ?? "";
    const isAtSide = x > right - textWidth(words, font) / 2;
    write(words, "italic", isAtSide ? right : x, isAtSide ? y - 8 : top - 6, isAtSide ? "end" : "middle");
    return polyline(inside);
  });

  const spot = (place: State): Pixel => at(point(place));
  const besides = [
    [one, temperatures[0], 12, font, "start"],
    [two, temperatures[1], 12, 5, "start"],
    [three, temperatures[2], -12, font, "end"],
    [four, temperatures[3], -12, -4, "end"],
    [five, temperatures[4], 0, -16, "middle"],
    [alone, aloneAt, 8, -6, "start"],
  ] as const;
  for (const [place, words, dx, dy, anchor] of besides)
    write(words, "value", spot(place)[0] + dx, spot(place)[1] + dy, anchor);

  const yMarks = niceMarks(span.T[0], span.T[1], 5).map(({ value, text }) => ({
    text,
    at: at({ s: 0, T: kelvin(value) })[1],
  }));
  for (const { text, at: y } of yMarks) write(text, "mark", left - 8, y + font / 3, "end");
  const xMarks = niceMarks(span.s[0] / 1000, span.s[1] / 1000, across).map(({ value, text }) => ({
    text,
    at: at({ s: value * 1000, T: 0 })[0],
  }));
  for (const { text, at: x } of xMarks) write(text, "mark", x, foot + font + 5, "middle");
  write("°C", "mark", 0, font, "start");
  write("entropy above the inlet, kJ/(kg·K)", "mark", right, height - 5, "end");

  return {
    frame: { x: left, y: top, w: right - left, h: foot - top },
    xMarks,
    yMarks,
    levels,
    ideals: ideals.map(([from, to]) => polyline([at(from), at(to)])),
    compressions: [
      [spot(one), spot(two)],
      [spot(three), spot(four)],
    ] as const,
    alone: [spot(one), spot(alone)] as const,
    coolings: [course(one, two, three).map(at), course(one, four, five).map(at)] as const,
    spots: places.map(spot),
    texts,
    points,
  };
}

/** All that the diagram shows, in words. */
export function describeTs(stages: TwoStages): string {
  const { places, alone, pressures, temperatures, aloneAt } = stages;
  const rise = (from: State, to: State) => Math.round(entropyAbove(from, to));
  const [one, two, three, four] = places;
  return [
    "Temperature against entropy.",
    `The first compressor takes the air from ${temperatures[0]} at ${pressures[0]} to ${temperatures[1]} at ${pressures[1]}; its entropy rises by ${rise(one, two)} J/(kg·K), where an ideal one adds none.`,
    `The cooler between brings it down to ${temperatures[2]}.`,
    `The second compressor takes it to ${temperatures[3]} at ${pressures[2]}, and adds ${rise(three, four)} J/(kg·K).`,
    `The cooler behind brings it to ${temperatures[4]}.`,
    `One compressor alone would end at ${aloneAt}, ${rise(one, alone)} J/(kg·K) above the inlet.`,
  ].join(" ");
}
