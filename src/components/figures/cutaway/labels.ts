import type { Point } from "../../../widgets/pictures/path.ts";
import type { Anchor } from "../placed-text.tsx";
import { type Frame, measures } from "./frame.ts";
import type { Hoses } from "./streams.ts";

export const labelNames = [
  "air in",
  "air out",
  "core",
  "first pass",
  "second pass",
  "partition",
  "return tank",
  "water in",
  "water out",
  "vent",
  "drain",
] as const;

export type LabelName = (typeof labelNames)[number];

/** Temperatures as the reader sees them, with their unit; one that is left out is not known. */
export interface CutawayNumbers {
  readonly airIn?: string | undefined;
  readonly airOut?: string | undefined;
  readonly waterIn?: string | undefined;
  readonly waterMid?: string | undefined;
  readonly waterOut?: string | undefined;
}

/** Lines of text that begin, end or have their middle at x, with the base lines of each. */
export interface PlacedLabel {
  readonly x: number;
  readonly anchor: Anchor;
  readonly lines: readonly { readonly text: string; readonly y: number; readonly isNumber: boolean }[];
  /** From the text to what it names. */
  readonly leader?: readonly [Point, Point];
}

export interface LabelsWanted {
  readonly hoses: Hoses;
  readonly labels: readonly LabelName[];
  readonly numbers: CutawayNumbers;
}

/** Where the first line of a label begins, or ends where it stands left of the cooler. */
type Spot = readonly [x: number, y: number];

/** Of labels that a leader joins to the drawing; streams are named at their arrows. */
interface Spots {
  readonly returnTank: Spot;
  readonly leftPass: Spot;
  readonly rightPass: Spot;
  readonly core: Spot;
  readonly vent: Spot;
  /** The base line of what stands under the cooler, and how far a drain's word is from the middle. */
  readonly under: readonly [y: number, aside: number];
}

const spots = (isWide: boolean): Spots =>
  isWide
    ? {
        returnTank: [176, 66],
        leftPass: [146, 124],
        rightPass: [650, 72],
        core: [676, 126],
        vent: [462, 34],
        under: [455, 84],
      }
    : {
        returnTank: [72, 34],
        leftPass: [76, 92],
        rightPass: [276, 62],
        core: [282, 102],
        vent: [204, 34],
        under: [406, 72],
      };

/** The labels of the drawing, those of the streams first. Water is named, and numbers stand, in any case. */
export function placeLabels(frame: Frame, { hoses, labels, numbers }: LabelsWanted): readonly PlacedLabel[] {
  const { isWide, width, font, core, returnTank } = frame;
  const {
    left,
    right,
    middle,
    cavity,
    eaves,
    crown,
    nozzleAt,
    nozzleEnds,
    axis,
    ductEnds,
    floor,
    foot,
    drains,
  } = measures(frame);
  const spot = spots(isWide);
  const line = font + 3;
  const has = (name: LabelName) => labels.includes(name);

  const stream = (
    word: string | false,
    number: string | undefined,
    x: number,
    anchor: Anchor,
    over: number,
    under: number,
  ) => {
    const lines = [
      ...(word ? [{ text: word, y: over, isNumber: false }] : []),
      ...(number ? [{ text: number, y: under, isNumber: true }] : []),
    ];
    return lines.length ? [{ x, anchor, lines }] : [];
  };
  const airAt = (side: 0 | 1) => {
    const [word, number] = side
      ? (["air out", numbers.airOut] as const)
      : (["air in", numbers.airIn] as const);
    const shown = has(word) && word;
    if (isWide)
      return stream(
        shown,
        number,
        side ? (ductEnds[1] + width + 8) / 2 : (ductEnds[0] - 8) / 2,
        "middle",
        axis - 13,
        axis + 23,
      );
    const over = axis - 1.07 * (frame.duct.half + frame.wall) - 9;
    return stream(shown, number, side ? width : 0, side ? "end" : "start", over - (number ? line : 0), over);
  };
  const waterAt = (side: 0 | 1) => {
    const isIn = (side === 1) === (hoses === "right");
    const [name, number] = isIn
      ? (["water in", numbers.waterIn] as const)
      : (["water out", numbers.waterOut] as const);
    const x = side ? nozzleEnds[1] + (isWide ? 56 : 40) : nozzleEnds[0] - (isWide ? 58 : 42);
    return stream(has(name) ? name : "water", number, x, "middle", nozzleAt - 11, nozzleAt + font + 7);
  };

  const led = (
    name: LabelName,
    [x, y]: Spot,
    to: Point,
    texts: readonly string[],
    number?: string,
  ): PlacedLabel[] => {
    const words = has(name) ? texts : [];
    const lines = [...words, ...(number ? [number] : [])].map((text, i) => ({
      text,
      y: y + i * line,
      isNumber: i === words.length,
    }));
    if (lines.length === 0) return [];
    const isLeft = x < middle;
    return [
      { x, anchor: isLeft ? "end" : "start", lines, leader: [[x + (isLeft ? 6 : -6), y - font / 3], to] },
    ];
  };
  const passes =
    hoses === "right" ? (["second pass", "first pass"] as const) : (["first pass", "second pass"] as const);
  const under = (name: LabelName, aside: number, to: Point): PlacedLabel[] =>
    has(name)
      ? [
          {
            x: middle + aside,
            anchor: "middle",
            lines: [{ text: name, y: spot.under[0], isNumber: false }],
            leader: [[middle + aside * 0.92, spot.under[0] - font + 1], to],
          },
        ]
      : [];
  const outermost = (columns: readonly number[]) =>
    ((columns.at(-1) ?? middle) + (columns.at(-2) ?? middle)) / 2;
  return [
    ...airAt(0),
    ...airAt(1),
    ...waterAt(0),
    ...waterAt(1),
    ...led(
      "return tank",
      spot.returnTank,
      [cavity[0] + 0.45 * returnTank, eaves + 0.2 * returnTank],
      ["return tank"],
      numbers.waterMid,
    ),
    ...led(passes[0], spot.leftPass, [outermost(left), core.top + 26], [passes[0]]),
    ...led(passes[1], spot.rightPass, [outermost(right), core.top + 26], [passes[1]]),
    ...led("core", spot.core, [core.right + 0.35 * frame.depth, core.top + 58], ["core: fins", "and tubes"]),
    ...led("vent", spot.vent, [middle + 5, crown - 9], ["vent"]),
    ...under("partition", 0, [middle, floor - 0.3 * frame.nozzleTank]),
    ...under("drain", -spot.under[1], [drains[0] - 5, foot + 9]),
    ...under("drain", spot.under[1], [drains[1] + 5, foot + 9]),
  ];
}
