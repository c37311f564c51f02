import type { Bank } from "../../../calc/exchanger/field/temperature-field.ts";
import type { Layout } from "../../../calc/exchanger/layout.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { FieldData } from "./field-marks.ts";

/** Where air and water together are warmest: a corner of a bank, or a place within it. */
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

/** Mean temperatures in kelvin that differ by less are one. */
const alike: SI = 0.0005;

/** At the edge, the parabola that has the means of the cells next to it; with fewer cells a line, or their mean. */
const toEdge = [[1], [3 / 2, -1 / 2], [11 / 6, -7 / 6, 1 / 3]] as const;

/** -1 where a cell lies at the first edge, 1 at the last, 0 between them. */
const edgeOf = (i: number, count: number): -1 | 0 | 1 => (i === 0 ? -1 : i === count - 1 ? 1 : 0);

/** Cells and what they count, from the edge inwards. */
function partsOf(i: number, count: number): readonly (readonly [at: number, share: number])[] {
  const edge = edgeOf(i, count);
  if (edge === 0) return [[i, 1]];
  return (toEdge[Math.min(count, 3) - 1] ?? [1]).map((share, k) => [i - k * edge, share]);
}

/** One water in the whole outlet, so that it is the mean that leaves. */
const leavesAlike = (layout: Layout): boolean =>
  layout.kind === "along" ||
  ((layout.kind === "across" || layout.kind === "side by side") && layout.rows === 1);

/** The warmest cell, and the temperatures at the corner where it stands. `T` reads a share of the span as kelvin. */
export function hotEndOf(data: FieldData, T: (share: number) => SI): HotEnd {
  const { field, layout } = data;
  const { columns, rows, banks } = field;
  const cells = banks.flatMap((bank, at) =>
    Array.from(bank.airCells, (share, i) => ({
      at,
      bank,
      ix: i % columns,
      iy: Math.floor(i / columns),
      mean: (T(share) + T(bank.waterCells[i] ?? share)) / 2,
    })),
  );
  const most = Math.max(...cells.map(({ mean }) => mean));
  const warmest = cells.filter(({ mean }) => most - mean < alike);
  const [first] = warmest;
  if (!first) throw new RangeError("a field has cells");
  const { bank, at, ix, iy } = first;
  const column = warmest.filter((cell) => cell.at === at && cell.ix === ix);
  const isWholeHeight = column.length === rows && rows > 1;

  const [across, up] = [edgeOf(ix, columns), isWholeHeight ? 0 : edgeOf(iy, rows)];
  const place = ([from, to]: Bank["x"], edge: number, i: number, count: number) =>
    from + (to - from) * (edge === 0 ? (i + 0.5) / count : (1 + edge) / 2);
  const atCorner = (shares: Float64Array) => {
    const columnsOf = partsOf(ix, columns);
    const rowsOf = up === 0 ? [[iy, 1] as const] : partsOf(iy, rows);
    const sum = rowsOf.reduce(
      (total, [y, ofRow]) =>
        total +
        ofRow *
          columnsOf.reduce((row, [x, share]) => row + share * (shares[y * columns + x] ?? Number.NaN), 0),
      0,
    );
    // Nothing is warmer than what enters warm, nor colder than what enters cold.
    return T(Math.max(0, Math.min(1, sum)));
  };

  const runs = { up, down: -up, along: across, against: -across }[bank.waterRuns];
  const passes = Math.max(...banks.map(({ pass }) => pass));
  const airOf = () => {
    if (across < 0 && bank.x[0] === 0) return data.hot;
    if (across > 0 && layout.kind === "along") return data.airOut ?? T(1 - field.effectiveness);
    return atCorner(bank.airCells);
  };
  const waterOf = () => {
    if (runs < 0 && bank.pass === 1) return data.cold;
    if (runs > 0 && bank.pass === passes && leavesAlike(layout)) return data.waterOut ?? T(field.waterOut);
    return atCorner(bank.waterCells);
  };
  return {
    x: place(bank.x, across, ix, columns),
    y: isWholeHeight ? 0.5 : place(bank.y, up, iy, rows),
    bank: at,
    air: airOf(),
    water: waterOf(),
    isWholeHeight,
  };
}
