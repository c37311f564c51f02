import type { TemperatureField } from "../../../calc/exchanger/field/temperature-field.ts";
import type { Layout } from "../../../calc/exchanger/layout.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type HotEnd, hotEndOf } from "./field-hot-end.ts";

/** What a field drawing shows, in kelvin. */
export interface FieldData {
  readonly layout: Layout;
  readonly field: TemperatureField;
  /** Entering air and entering water. */
  readonly hot: SI;
  readonly cold: SI;
  /** Mean leaving temperatures, where they are known better than from the cells. */
  readonly airOut?: SI | undefined;
  readonly waterOut?: SI | undefined;
}

/** A stripe of leaving air; `y` from 0 at the bottom of the face to 1. */
export interface Stripe {
  readonly y: number;
  readonly T: SI;
}

export interface FieldMarks {
  readonly airOut: SI;
  readonly waterOut: SI;
  /** The leaving air from the bottom to the top, for each part of the face. */
  readonly parts: readonly (readonly Stripe[])[];
  readonly hottest: Stripe;
  readonly coolest: Stripe;
  /** All of them are alike. */
  readonly isEven: boolean;
  readonly hotEnd: HotEnd;
}

/** Differences below this are none: half of what is printed. */
const alike: SI = 0.05;

export const temperatureIn =
  ({ hot, cold }: FieldData) =>
  (share: number): SI =>
    cold + share * (hot - cold);

/** The temperatures and places that a field drawing marks. */
export function marksOf(data: FieldData): FieldMarks {
  const { field, layout } = data;
  const T = temperatureIn(data);
  const stripes = Array.from(
    field.airOut,
    (share, i): Stripe => ({ y: (i + 0.5) / field.airOut.length, T: T(share) }),
  );
  const byWarmth = [...stripes].sort((a, b) => b.T - a.T);
  const [hottest = { y: 0.5, T: data.hot }] = byWarmth;
  const coolest = byWarmth.at(-1) ?? hottest;
  const faces = layout.kind === "side by side" ? 2 : 1;
  const each = stripes.length / faces;
  return {
    airOut: data.airOut ?? T(1 - field.effectiveness),
    waterOut: data.waterOut ?? T(field.waterOut),
    parts: Array.from({ length: faces }, (_, i) => stripes.slice(i * each, (i + 1) * each)),
    hottest,
    coolest,
    isEven: hottest.T - coolest.T < alike,
    hotEnd: hotEndOf(data, T),
  };
}
