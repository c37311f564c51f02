import type { Bank, TemperatureField } from "../../../calc/exchanger/field/temperature-field.ts";
import type { Layout, SideBySide } from "../../../calc/exchanger/layout.ts";
import type { Box } from "./boxes.ts";
import { acrossHoses, roomBetween } from "./hose-across.ts";
import { alongHoses } from "./hose-along.ts";
import { addHose, corners, down, type Frame, type Hoses, middle, shares, sketch, up } from "./hose-parts.ts";
import type { Point } from "./path.ts";

/** A core seen from the side, with the field of one stream in it. */
export interface Panel {
  readonly stream: "air" | "water";
  readonly core: Box;
  /** Where each bank of the field stands, in its order. */
  readonly banks: readonly Box[];
  readonly hoses: Hoses;
  /** Heights at which arrows of air come and go. */
  readonly winds: readonly number[];
}

const [tank, hose, gap] = [18, 34, 20];

/** What stands over and under the core of a panel. */
export function roomAround(layout: Layout): { readonly over: number; readonly under: number } {
  const isOutOnTop = layout.kind === "across" && (layout.next === "same way" || layout.passes % 2 === 1);
  // Without a tank there is still a line of text over the profile.
  return { over: tank + (isOutOnTop ? hose : 0), under: hose + (layout.kind === "along" ? 0 : tank) };
}

/** Halves of the face stand one above the other, with their tanks and a hose between them. */
const between = 2 * tank + hose + 8;

/** How much taller a core is drawn. */
export const extraHeight = (layout: Layout): number => (layout.kind === "side by side" ? between : 0);

/** One panel with the core in a box. */
export function panelOf(stream: Panel["stream"], core: Box, layout: Layout, field: TemperatureField): Panel {
  const frame: Frame = { core, tank, hose, gap, pitch: 70 };
  const hoses = hosesOf(layout, frame);
  const isHalved = layout.kind === "side by side";
  const bodies = isHalved ? hoses.passes.map(({ box }) => box) : [core];
  return {
    stream,
    core,
    banks: field.banks.map((bank, place) => boxOf(bank, place, layout, frame, hoses)),
    hoses,
    winds: bodies.flatMap(({ y, h }) => shares(y, h, isHalved ? 2 : 3)),
  };
}

function hosesOf(layout: Layout, frame: Frame): Hoses {
  switch (layout.kind) {
    case "across":
      return acrossHoses(layout, frame);
    case "along":
      return alongHoses(layout, frame);
    case "side by side":
      return halvesOf(layout, frame);
    case "shell":
      throw new RangeError("shells have no field to draw");
  }
}

/** The part of the core that a bank fills: between passes there may be room. */
function boxOf(bank: Bank, place: number, layout: Layout, frame: Frame, { passes }: Hoses): Box {
  const { core } = frame;
  if (layout.kind === "side by side") return passes.find(({ pass }) => pass === bank.pass)?.box ?? core;
  const room = layout.kind === "across" ? roomBetween(layout, frame) : 0;
  const w = core.w - room * (passes.length - 1);
  return { ...core, x: core.x + bank.x[0] * w + place * room, w: (bank.x[1] - bank.x[0]) * w };
}

/** Passes side by side as this picture shows them: the first half of the face below, the second above it. */
function halvesOf({ rows }: SideBySide, { core, pitch }: Frame): Hoses {
  const drawn = sketch();
  const h = (core.h - between) / 2;
  const upper: Box = { ...core, h };
  const lower: Box = { ...core, y: core.y + h + between, h };
  const x = middle(core);
  const foot = (box: Box) => box.y + box.h;
  drawn.cores.push(corners(lower), corners(upper));
  drawn.passes.push({ pass: 1, box: lower, runs: up }, { pass: 2, box: upper, runs: down });
  const columns = shares(core.x, core.w, rows === "many" ? Math.max(3, Math.round(core.w / pitch)) : 1);
  for (const { box, runs } of drawn.passes) {
    const ends = [foot(box) + tank / 2, box.y - tank / 2];
    const [from = 0, to = 0] = runs === up ? ends : ends.reverse();
    for (const y of ends) {
      drawn.tanks.push({ x: core.x + 2, y: y - tank / 2, w: core.w - 4, h: tank });
      if (columns.length > 1) drawn.water.push(columns.map((column) => [column, y]));
    }
    for (const column of columns) {
      drawn.water.push([
        [column, from],
        [column, to],
      ]);
      drawn.waterTips.push({ at: [column, box.y + h / 2 + 4 * runs[1]], to: runs });
    }
  }
  const side = core.x + core.w + 14;
  const [low, high] = [lower, upper].map(({ y }) => y - tank / 2) as [number, number];
  drawn.water.push([
    [x, low],
    [side, low],
    [side, high],
    [x, high],
  ]);
  drawn.waterTips.push({ at: [side, core.y + core.h / 2], to: up });
  for (const [box, leads, long] of [
    [lower, "in", hose],
    [upper, "out", hose - 2],
  ] as const) {
    const at: Point = [x, foot(box) + tank];
    drawn.water.push([at, [x, foot(box) + tank / 2]]);
    addHose(drawn, long, { at, side: "bottom", leads, word: "right" });
  }
  return drawn;
}

/** Where a height of the whole face stands in a panel. */
export function heightIn({ banks }: Panel, y: number, of: readonly Bank[]): number {
  const i = of.findIndex((bank) => y >= bank.y[0] && y <= bank.y[1]);
  return pointIn(banks[i], of[i], [of[i]?.x[0] ?? 0, y])[1];
}

/** Where a place of the core stands in the box of its bank. */
export function pointIn(box: Box | undefined, bank: Bank | undefined, [x, y]: Point): Point {
  if (!box || !bank) throw new RangeError("no bank of the core is there");
  return [
    box.x + (box.w * (x - bank.x[0])) / (bank.x[1] - bank.x[0]),
    box.y + box.h * (1 - (y - bank.y[0]) / (bank.y[1] - bank.y[0])),
  ];
}
