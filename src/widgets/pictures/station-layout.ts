import type { SI } from "../../../calc/quantity/domain-error.ts";
import { drawable, niceMarks, r1 } from "./numbers.ts";
import type { Point } from "./path.ts";
import { edge, type Level, type Reach, samples } from "./ribbon.ts";
import { parting } from "./station-sentence.ts";
import { textWidth, together, wrap } from "./text.ts";
import type { Part, Station, StationDiagramProps } from "./types.ts";

export interface Size {
  readonly wide: boolean;
  readonly width: number;
  readonly font: number;
  /** Where the ribbon may stand. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** The thickness of the ribbon where the air is thinnest. */
  readonly thickest: number;
  /** Half the width of a part on the rail, where there is room for it. */
  readonly part: number;
}

export const wideSize: Size = {
  wide: true,
  width: 800,
  font: 15,
  left: 84,
  right: 784,
  top: 38,
  bottom: 262,
  thickest: 62,
  part: 20,
};

export const narrowSize: Size = {
  wide: false,
  width: 350,
  font: 14,
  left: 42,
  right: 342,
  top: 36,
  bottom: 222,
  thickest: 40,
  part: 13,
};

/** No smaller span of temperature fills the height, so that a small difference looks small. */
const leastSpan: SI = 40;

/** From one line to the next: of the names over the parts, of what is written at their water. */
const nameLine = 16;
export const waterLine = 18;

const sound = ({ T, rho }: Station) => drawable(T) && drawable(rho) && rho > 0;

export function layoutStations(props: StationDiagramProps, size: Size) {
  const { stations, parts, ghost, show } = props;
  const pitch = (size.right - size.left) / stations.length;
  const columns = stations.map((_, i) => size.left + pitch * (i + 0.5));
  const reach: Reach = { left: size.left, right: size.right, level: 0.23 * pitch };

  const drawn = stations.every(sound);
  const shadow =
    drawn && ghost?.stations.length === stations.length && ghost.stations.every(sound) ? ghost.stations : [];
  const { levels, heightOf } = stand(drawn ? [...stations, ...shadow] : [], columns, size, reach);
  const real = levels.slice(0, stations.length);
  const above = edge(real, reach, -1);
  const below = edge(real, reach, 1);

  const scale = show.temperatureScale;
  const [top, bottom] = [heightOf.inverse(size.top), heightOf.inverse(size.bottom)];
  const ticks = niceMarks(scale.shown(bottom), scale.shown(top), size.wide ? 5 : 4)
    .map(({ value, text }) => ({ text, y: heightOf(scale.kelvin(value)) }))
    .filter(({ y }) => drawable(y));

  const temperatures = real.map((level, i) => {
    const { number, unit } = show.temperature(stations[i]?.T ?? 0);
    const after = size.wide && unit ? ` ${unit}` : "";
    const w = textWidth(number, size.font + 2, true) + textWidth(after, size.font);
    return { number, unit: after, ...beside(level, w, samples(above), samples(below), size) };
  });

  const last = parting(props) < 0 ? undefined : shadow.at(-1);
  const ghostPath = last ? shadowPath(levels, parting(props), stations.length, reach) : [];
  const ghostText =
    last && `${ghost?.label}: ${together(show.temperature(last.T))}, ${together(show.density(last.rho))}`;

  const rows = [
    { symbol: "p", show: show.pressure, of: (s: Station) => s.p },
    { symbol: "ρ", show: show.density, of: (s: Station) => s.rho },
    { symbol: "w", show: show.humidity, of: (s: Station) => s.w },
  ].flatMap(({ symbol, show, of }) => {
    const values = stations.map((s) => of(s));
    const first = values.find(drawable);
    if (first === undefined) return [];
    const { unit } = show(first);
    return [{ symbol, unit, values: values.map((v) => (drawable(v) ? show(v).number : "")) }];
  });

  const named = parts
    .filter(({ after }) => after >= 0 && after < stations.length - 1)
    .map((part) => ({ ...part, x: size.left + pitch * (part.after + 1) }));
  const part = r1(Math.min(size.part, 0.22 * pitch));
  const halfWidth = (label = "") => textWidth(label, size.font) / 2 + 3;
  const staggered = named.some(({ label, x }, i) => {
    const next = named[i + 1];
    return next !== undefined && halfWidth(label) + halfWidth(next.label) > next.x - x;
  });
  // Names that stand in two rows have the room of two parts, less where the drawing ends.
  const labels = named.map(({ label, x }) => {
    const room = Math.min(staggered ? 2 * pitch - 6 : size.width, 2 * x, 2 * (size.width - x));
    return label ? wrap(label, size.font, room) : [];
  });
  const rowOf = (i: number) => (staggered && i % 2 === 0 ? 1 : 0);
  const [near = 0, far = 0] = [0, 1].map((row) =>
    Math.max(0, ...labels.map((lines, i) => (rowOf(i) === row ? lines.length : 0))),
  );
  const rail = size.bottom + 34 + nameLine * Math.max(1, near + far) + (size.wide ? 4 : 0);
  const waters = named.map(({ kind, water, x }) =>
    kind === "cooler" && water !== false ? besideWater(water, x, rail, part, size) : undefined,
  );
  const feet = waters.map((water) => (water ? water.y + (water.lines.length - 1) * waterLine + 18 : 0));
  const table = Math.max(rail + size.part + 36, ...feet);
  const stacked = !size.wide && stations.length > 3;
  const rowHeight = stacked ? 44 : 26;

  return {
    columns,
    reach,
    levels: real,
    above,
    below,
    ticks,
    temperatures,
    ghostPath,
    ghostText,
    rail,
    part,
    parts: named.map(({ kind, foot, x }, i) => {
      const lines = labels[i] ?? [];
      const last = rail - size.part - 8 - rowOf(i) * nameLine * near;
      return {
        kind,
        foot,
        x,
        names: lines.map((text, k) => ({ text, y: last - (lines.length - 1 - k) * nameLine })),
        water: waters[i],
      };
    }),
    rows: rows.map((row, i) => ({ ...row, y: table + i * rowHeight })),
    stacked,
    height: table + rows.length * rowHeight + 4,
  };
}

/** What is written at the water of a cooler: beside its arrows where there is room for it, else under them. */
function besideWater(
  water: Part["water"],
  x: number,
  rail: number,
  part: number,
  { wide, width, font }: Size,
) {
  const { in: enters, out: leaves, flow } = water || {};
  const lines = [
    "water",
    enters && `in ${together(enters)}`,
    leaves && `out ${together(leaves)}`,
    flow && together(flow),
  ].filter((text) => text !== undefined);
  const w = Math.max(...lines.map((text) => textWidth(text, font)));
  const beside = x + part / 2 + 8;
  const isBeside = wide || lines.length === 1;
  return {
    lines,
    isBeside,
    x: isBeside ? Math.min(beside, width - w) : Math.max(w / 2, Math.min(width - w / 2, x)),
    y: rail + part + (isBeside ? 18 : 24 + font),
  };
}

/** The tallest scale on which every ribbon and its label stay between top and bottom. */
function stand(stations: readonly Station[], columns: readonly number[], size: Size, reach: Reach) {
  const roof = size.top + 24;
  const floor = size.bottom - 24;
  const largest = Math.max(...stations.map(({ rho }) => 1 / rho));
  const thickest = Math.min(size.thickest, 3 * reach.level);
  const halves = stations.map(({ rho }) => (thickest / 2) * (1 / rho / largest));
  const temperatures = stations.map(({ T }) => T);

  let perKelvin = (floor - roof - thickest) / leastSpan;
  temperatures.forEach((hot, i) => {
    temperatures.forEach((cold, j) => {
      const room = floor - roof - (halves[i] ?? 0) - (halves[j] ?? 0);
      if (hot > cold) perKelvin = Math.min(perKelvin, room / (hot - cold));
    });
  });
  const at = (T: SI, zero: number) => zero - T * perKelvin;
  const zeroLow = Math.min(...temperatures.map((T, i) => floor - (halves[i] ?? 0) + T * perKelvin));
  const slack = Math.min(...temperatures.map((T, i) => at(T, zeroLow) - (halves[i] ?? 0) - roof));
  const zero = stations.length ? zeroLow - slack / 2 : floor + 273.15 * perKelvin;

  const levels = stations.map(
    ({ T }, i): Level => ({ x: columns[i % columns.length] ?? 0, y: at(T, zero), half: halves[i] ?? 0 }),
  );
  const heightOf = Object.assign((T: SI) => at(T, zero), {
    inverse: (y: number): SI => (zero - y) / perKelvin,
  });
  return { levels, heightOf };
}

/** A temperature stands over its station, or under it where the ribbon's slopes would push it further away. */
function beside(level: Level, w: number, above: Point[], below: Point[], size: Size) {
  const over = (edge: Point[]) => edge.filter(([x]) => Math.abs(x - level.x) <= w / 2 + 3).map(([, y]) => y);
  const high = Math.min(level.y - level.half, ...over(above)) - 8;
  const low = Math.max(level.y + level.half, ...over(below)) + size.font + 5;
  const lifted = level.y - level.half - high;
  const sunk = low - level.y - level.half - size.font;
  const y = lifted > sunk + (size.wide ? 14 : 6) ? low : high;
  return { x: level.x, y };
}

/** The two edges of the path not taken, from the station before it departs from the real one. */
function shadowPath(levels: readonly Level[], departs: number, count: number, reach: Reach): Point[][] {
  const from = Math.max(0, departs - 1);
  const shadow = levels.slice(count + from);
  const path = { ...reach, left: from ? (shadow[0]?.x ?? reach.left) : reach.left };
  return [edge(shadow, path, -1), edge(shadow, path, 1)];
}
