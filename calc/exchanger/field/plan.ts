import type { Across, Layout, SideBySide } from "../layout.ts";

/** One bank of a core, and where its streams come from. */
export interface PlannedBank {
  /** Part of the core's depth, 0 where the air enters. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** 1 is the first that the water meets. */
  readonly pass: number;
  readonly waterRuns: "up" | "down";
  /** The place in the list of the bank whose water comes here; without one the water enters the core here. */
  readonly waterFrom?: number;
  /** The part of the face whose air it takes; banks of one stripe lie one behind the other. */
  readonly stripe: number;
}

/** Equal banks, in the order in which the air meets them. */
export interface Plan {
  readonly banks: readonly PlannedBank[];
  readonly stripes: number;
  /** Transfer units of one bank, on the air that crosses it. */
  readonly NTU: number;
  /** Heat-capacity rate of the air that crosses one bank over that of the water in it. */
  readonly R: number;
  readonly channels: "one" | "many";
  readonly air: Across["air"];
  readonly turn: Across["turn"];
}

const whole = [0, 1] as const;

/** The part number `i` of `n` equal ones. */
const part = (i: number, n: number): readonly [number, number] => [i / n, (i + 1) / n];

/** All rows of one pass take their share of the water side by side. */
function fedTogether(layout: Across, rows: number, NTU: number, R: number): Plan {
  return {
    banks: Array.from({ length: rows }, (_, i) => ({
      x: part(i, rows),
      y: whole,
      pass: 1,
      waterRuns: "up",
      stripe: 0,
    })),
    stripes: 1,
    NTU: NTU / rows,
    R: R * rows,
    channels: "one",
    air: layout.air,
    turn: "mixed",
  };
}

function passesInDepth(layout: Across, NTU: number, R: number): Plan {
  const { passes, order, rows, air, turn, next } = layout;
  const bank = (i: number): PlannedBank => {
    const pass = order === "counter" ? passes - i : i + 1;
    return {
      x: part(i, passes),
      y: whole,
      pass,
      waterRuns: next === "back" && pass % 2 === 0 ? "down" : "up",
      ...(pass > 1 && { waterFrom: order === "counter" ? i + 1 : i - 1 }),
      stripe: 0,
    };
  };
  return {
    banks: Array.from({ length: passes }, (_, i) => bank(i)),
    stripes: 1,
    NTU: NTU / passes,
    R,
    channels: rows === "many" ? "many" : "one",
    air,
    turn,
  };
}

function passesOnFace({ rows }: SideBySide, NTU: number, R: number): Plan {
  return {
    banks: [
      { x: whole, y: part(0, 2), pass: 1, waterRuns: "up", stripe: 0 },
      { x: whole, y: part(1, 2), pass: 2, waterRuns: "down", waterFrom: 0, stripe: 1 },
    ],
    stripes: 2,
    NTU,
    R: R / 2,
    channels: rows === "many" ? "many" : "one",
    air: "unmixed",
    turn: "mixed",
  };
}

const isCount = (x: number) => Number.isInteger(x) && x >= 1;

/** How a core falls into banks. Throws a RangeError for numbers of passes and rows that no core has. */
export function planOf(layout: Exclude<Layout, { kind: "along" | "shell" }>, NTU: number, R: number): Plan {
  if (layout.kind === "side by side") return passesOnFace(layout, NTU, R);
  const { passes, rows } = layout;
  if (!isCount(passes)) throw new RangeError(`a core has no ${passes} passes`);
  if (rows === "many" || rows === 1) return passesInDepth(layout, NTU, R);
  if (!isCount(rows)) throw new RangeError(`a pass has no ${rows} rows`);
  if (passes > 1)
    throw new RangeError("rows are counted in a single pass only; several passes have one row or many");
  return fedTogether(layout, rows, NTU, R);
}
