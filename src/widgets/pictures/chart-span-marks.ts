import type { Box } from "./boxes.ts";
import type { labeller } from "./chart-labels.ts";
import { besideLine, inBand } from "./chart-places.ts";
import { bandsIn, boundsIn, type Span, wrongIn } from "./chart-spans.ts";
import { textWidth, wrap } from "./text.ts";
import type { ChartProps } from "./types.ts";

/** Where bands are shaded, bounds stand, and what is out of bounds is hatched. */
export function layoutSpans(props: ChartProps, across: Span, frame: Box, atX: (x: number) => number) {
  const upright = ([from, to]: Span): Box => ({ ...frame, x: atX(from), w: atX(to) - atX(from) });
  const bounds = boundsIn(props, across).map(({ label, wrong, shown, at }) => {
    const box = upright(shown);
    return { label, box, side: wrong === "above" ? 1 : -1, isHere: at !== undefined } as const;
  });
  return {
    bands: bandsIn(props, across).map(({ label, shown }) => ({ label, box: upright(shown) })),
    bounds: bounds.map((bound) => ({ ...bound, edge: bound.box.x + (bound.side < 0 ? bound.box.w : 0) })),
    hatched: wrongIn(boundsIn(props, across)).map(upright),
  };
}

/** What is hatched is as bad a place for a name as this; but for the name of a bound it is the right one. */
const hatchedCost = 3;

/** Has labels keep clear of edges and of what is hatched, and gives what names the bounds and bands. */
export function nameSpans(
  { bands, bounds, hatched }: ReturnType<typeof layoutSpans>,
  room: Box,
  font: number,
  { avoid, put }: Pick<ReturnType<typeof labeller>, "avoid" | "put">,
): (() => number)[] {
  const line = font + 3;
  // In lines that fit where the name belongs, if that takes no more than three.
  const widthFor = (label: string, box: Box) => {
    const inside = Math.min(box.w - 10, 0.4 * room.w);
    const lines = wrap(label, font, inside);
    const fits = lines.length <= 3 && lines.every((text) => textWidth(text, font) <= inside);
    return fits ? inside : 0.4 * room.w;
  };
  const keepOff = (x: number, w: number, cost: number) => avoid(x, room.y, w, room.h, cost);
  for (const { edge, isHere } of bounds) if (isHere) keepOff(edge - 2, 4, 3);
  for (const { x, w } of bands.map(({ box }) => box)) for (const edge of [x, x + w]) keepOff(edge - 1, 2, 1);
  for (const { x, w } of hatched) keepOff(x, w, hatchedCost);
  return [
    ...bounds.map(({ label, box, side, edge }) => {
      const places = besideLine(edge, side, room, line, hatchedCost);
      return () => put(label, widthFor(label, box), places, true);
    }),
    ...bands.map(({ label, box }) => {
      const places = inBand(box, room, line);
      return () => put(label, widthFor(label, box), places, true);
    }),
  ];
}
