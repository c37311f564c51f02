import type { TemperatureField } from "../../../calc/exchanger/field/temperature-field.ts";
import type { Isoline } from "./field-labels.ts";
import { type FieldData, temperatureIn } from "./field-marks.ts";
import type { Panel } from "./field-panel.ts";
import { corners } from "./hose-parts.ts";
import { linesOf, ringsAbove } from "./isobands.ts";
import { niceMarks } from "./numbers.ts";
import { type Point, thin } from "./path.ts";
import { airColour } from "./ribbon.ts";
import type { TemperatureScale } from "./types.ts";

/** A line of one temperature, which parts two bands. */
export interface Level {
  /** Of the span from entering water, 0, to entering air, 1. */
  readonly share: number;
  readonly text: string;
}

/** Rings in one colour, to be filled over the bands before it. */
export interface Band {
  readonly colour: string;
  readonly rings: readonly (readonly Point[])[];
}

/** Part of a pixel that nobody sees. */
const tolerance = 0.3;

/** In units of the scale: lines of a smaller span would be closer than a thermometer is read. */
const leastSpan = 1;

export const cellsOf = ({ banks }: TemperatureField, stream: Panel["stream"]) =>
  banks.map(({ airCells, waterCells }) => (stream === "air" ? airCells : waterCells));

/** Round temperatures on the reader's scale, at most eight, between the coldest and the warmest cell of a stream. */
export function levelsOf(data: FieldData, stream: Panel["stream"], scale: TemperatureScale): Level[] {
  const shares = cellsOf(data.field, stream).flatMap((cells) => [...cells]);
  const [least, most] = [Math.min(...shares), Math.max(...shares)];
  const T = temperatureIn(data);
  const [low = 0, high = 0] = [least, most].map((share) => scale.shown(T(share))).sort((a, b) => a - b);
  if (high - low < leastSpan) return [];
  return niceMarks(low, high, 6)
    .map(({ value, text }) => ({
      share: (scale.kelvin(value) - data.cold) / (data.hot - data.cold),
      text,
    }))
    .filter(({ share }) => share > least && share < most)
    .sort((a, b) => a.share - b.share);
}

/** The bands of a panel and the lines between them, in pixels. */
export function bandsOf(data: FieldData, panel: Panel, scale: TemperatureScale) {
  const { columns, rows } = data.field;
  const cells = cellsOf(data.field, panel.stream);
  const shares = cells.flatMap((of) => [...of]);
  const levels = levelsOf(data, panel.stream, scale);
  const edges = [Math.min(...shares), ...levels.map(({ share }) => share), Math.max(...shares)];
  const T = temperatureIn(data);
  const colour = (i: number) => airColour(T(((edges[i] ?? 0) + (edges[i + 1] ?? 0)) / 2));
  const bands: Band[] = [{ colour: colour(0), rings: panel.banks.map(corners) }];
  const isolines: Isoline[] = [];
  const isOneCore = panel.hoses.cores.length === 1;
  levels.forEach(({ share, text }, i) => {
    const parts = panel.banks.map((box, bank) => {
      const at = ([x, y]: Point): Point => [box.x + x * box.w, box.y + (1 - y) * box.h];
      const rings = ringsAbove({ columns, rows, values: cells[bank] ?? [] }, share);
      return {
        // Air runs on from one bank to the next, and so do its lines.
        room: panel.stream === "air" && isOneCore ? panel.core : box,
        rings: rings.map((ring) => thin(ring.map(at), tolerance)),
        lines: rings.flatMap(linesOf).map((line) => line.map(at)),
      };
    });
    bands.push({ colour: colour(i + 1), rings: parts.flatMap(({ rings }) => rings) });
    isolines.push(
      ...(panel.stream === "air" ? [{ text, parts }] : parts.map((part) => ({ text, parts: [part] }))),
    );
  });
  return { bands, isolines };
}
