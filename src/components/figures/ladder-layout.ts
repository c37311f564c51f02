import { niceMarks } from "../../widgets/pictures/numbers.ts";
import { textWidth } from "../../widgets/pictures/text.ts";
import { capitalised } from "../sentence.ts";
import { textWriter } from "./placed-text.tsx";

/** A place on the path of the air: its words, its absolute pressure, and that as printed. */
export interface Rung {
  readonly label: string;
  readonly pressure: number;
  readonly text: string;
}

/** A difference of pressure between two rungs that follow one another. */
export interface Loss {
  /** The rung behind it. */
  readonly before: number;
  readonly label: string;
  readonly text: string;
}

export interface Ladder {
  /** From outside to the manifold. The first one is the barometer. */
  readonly rungs: readonly Rung[];
  readonly losses: readonly Loss[];
  /** The rungs at inlet and outlet of the compressor, and its ratio as printed. */
  readonly compressor: { readonly inlet: number; readonly outlet: number; readonly ratio: string };
  /** The reading of the gauge at the last rung. */
  readonly gauge: string;
  readonly unit: string;
  /** The same axis in another unit: how many of the first make one of the second. */
  readonly other: { readonly unit: string; readonly size: number };
}

export interface Size {
  readonly width: number;
  readonly font: number;
  readonly plot: number;
}

export const wideSize: Size = { width: 760, font: 15, plot: 300 };
export const narrowSize: Size = { width: 350, font: 14, plot: 300 };

export type Look = "value" | "note" | "name" | "mark";

/** Where everything of a ladder stands, in pixels from the left top corner. */
export function layoutLadder(ladder: Ladder, { width, font, plot }: Size) {
  const { rungs, losses, compressor, gauge, unit, other } = ladder;
  const line = font + 3;
  const top = 3.6 * line;
  const foot = top + plot;
  const left = textWidth("000", font) + 12;
  const right = width - textWidth("00", font) - 12;
  const most = Math.max(...rungs.map(({ pressure }) => pressure)) * 1.04;
  const y = (pressure: number) => foot - (plot * pressure) / most;
  const column = (right - left) / rungs.length;
  const from = (i: number) => left + i * column;
  const middle = (i: number) => from(i) + column / 2;

  const { texts, write } = textWriter<Look>(font);

  rungs.forEach(({ label, pressure, text }, i) => {
    const isBelow = i > 0 && pressure < (rungs[0]?.pressure ?? 0);
    write(text, "value", middle(i), isBelow ? y(pressure) + font + 5 : y(pressure) - 7);
    write(label, "name", middle(i), foot + line + 4);
  });
  // Inlet and outlet share their second line.
  write("of the compressor", "name", from(compressor.outlet), foot + 2 * line + 4);

  // The loss that leads to a rung stands beyond its number: its word, and the size of it.
  for (const { before, label, text } of losses) {
    const behind = rungs[before]?.pressure ?? 0;
    const isBelow = behind < (rungs[0]?.pressure ?? 0);
    const first = isBelow
      ? y(behind) + font + 5 + line
      : Math.min(y(behind), y(rungs[before - 1]?.pressure ?? 0)) - 7 - 2 * line;
    [label, text].forEach((words, k) => {
      write(words, "note", middle(before), first + line * k);
    });
  }

  const last = rungs.length - 1;
  const base = y(rungs[0]?.pressure ?? 0);
  const peak = y(rungs[last]?.pressure ?? 0);
  const at = {
    gauge: { x: from(last) + 0.3 * column, from: base, to: peak },
    absolute: { x: from(last) + 0.75 * column, from: foot, to: peak },
    ratio: {
      x: from(compressor.outlet),
      from: y(rungs[compressor.inlet]?.pressure ?? 0),
      to: y(rungs[compressor.outlet]?.pressure ?? 0),
    },
  };
  const between = (span: { from: number; to: number }) => (span.from + span.to) / 2;
  ["gauge", gauge].forEach((words, k) => {
    write(words, "note", at.gauge.x - 7, between(at.gauge) + line * (k - 0.5) + 4, "end");
  });
  ["absolute", "from here"].forEach((words, k) => {
    write(words, "note", at.absolute.x - 7, foot - line * (1 - k) - 8, "end");
  });
  write(`× ${compressor.ratio}`, "value", at.ratio.x - 8, between(at.ratio) + font / 3, "end");

  const marks = (size: number, x: number, anchor: "start" | "end") => {
    const list = niceMarks(0, most / size, 5).map((mark) => ({ ...mark, y: y(mark.value * size) }));
    for (const mark of list) write(mark.text, "mark", x, mark.y + font / 3, anchor);
    return list;
  };
  const firstMarks = marks(1, left - 8, "end");
  const otherMarks = marks(other.size, right + 8, "start");
  write(unit, "mark", left - 8, top - line, "end");
  write(other.unit, "mark", right + 8, top - line, "start");

  return {
    height: foot + 2 * line + 10,
    left,
    right,
    foot,
    top,
    steps: rungs.map(({ pressure }, i) => ({ from: from(i), to: from(i + 1), y: y(pressure) })),
    barometer: base,
    at,
    firstMarks,
    otherMarks,
    texts,
  };
}

/** All that the drawing shows, in words. */
export function describeLadder({ rungs, losses, compressor, gauge }: Ladder): string {
  const places = rungs.map(({ label, text }) => `${label} ${text}`).join(", ");
  const lost = losses.map(({ label, text }) => `${label} takes ${text.replace("−", "")}`).join(", ");
  return [
    `Pressures counted from empty space, inlet and outlet of the compressor: ${places}.`,
    lost && `${capitalised(lost)}.`,
    `The compressor multiplies its inlet pressure by ${compressor.ratio}.`,
    `The gauge in the manifold counts from the barometer and shows ${gauge}.`,
  ]
    .filter(Boolean)
    .join(" ");
}
