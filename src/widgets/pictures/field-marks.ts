import type { TemperatureField } from "../../../calc/exchanger/field/temperature-field.ts";
import type { Layout } from "../../../calc/exchanger/layout.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";

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

/** Where air and water together are warmest. */
export interface HotEnd {
  /** The place in the core: through it, and from its bottom to its top. */
  readonly x: number;
  readonly y: number;
  /** The index of its bank. */
  readonly bank: number;
  readonly air: SI;
  readonly water: SI;
  /** As warm at all heights. */
  readonly isWholeHeight: boolean;
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
    hotEnd: hotEndOf(data),
  };
}

function hotEndOf(data: FieldData): HotEnd {
  const { columns, rows, banks } = data.field;
  const T = temperatureIn(data);
  const cells = banks.flatMap((bank, at) =>
    Array.from(bank.airCells, (share, i) => {
      const [air, water] = [T(share), T(bank.waterCells[i] ?? share)];
      const [ix, iy] = [i % columns, Math.floor(i / columns)];
      const x = bank.x[0] + ((bank.x[1] - bank.x[0]) * (ix + 0.5)) / columns;
      const y = bank.y[0] + ((bank.y[1] - bank.y[0]) * (iy + 0.5)) / rows;
      return { x, y, bank: at, air, water, mean: (air + water) / 2 };
    }),
  );
  const most = Math.max(...cells.map(({ mean }) => mean));
  const warmest = cells.filter(({ mean }) => most - mean < alike / 100);
  const [first] = warmest;
  if (!first) throw new RangeError("a field has cells");
  const column = warmest.filter(({ x }) => x === first.x);
  const isWholeHeight = column.length === rows && rows > 1;
  return { ...first, y: isWholeHeight ? 0.5 : first.y, isWholeHeight };
}
