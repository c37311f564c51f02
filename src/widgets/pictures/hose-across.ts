import type { Across } from "../../../calc/exchanger/layout.ts";
import type { Box } from "./boxes.ts";
import {
  across,
  addHose,
  bend,
  corners,
  cuts,
  down,
  type Frame,
  type Hoses,
  middle,
  type Sketch,
  shares,
  sketch,
  throughAir,
  up,
} from "./hose-parts.ts";
import type { Point } from "./path.ts";

/** One pass: its box, whether its water rises, and the columns of its channels in the order of the air. */
interface Bank {
  readonly box: Box;
  readonly rises: boolean;
  readonly xs: readonly number[];
}

/** Whether the water of each channel stays its own where it turns. */
const isBundle = ({ rows, turn }: Across) => rows !== 1 && turn !== "mixed";

/** How far a pipe or stirred air keeps passes apart. */
export const roomBetween = ({ passes, next, air }: Across, { gap }: Frame): number =>
  passes > 1 && (next === "same way" || air === "remixed") ? gap : 0;

/** Passes that cross the air one behind the other, as the water takes them. */
function banksOf(layout: Across, frame: Frame): Bank[] {
  const { passes, order, rows, next } = layout;
  const { core, pitch } = frame;
  const w = (core.w - roomBetween(layout, frame) * (passes - 1)) / passes;
  const channels = rows === "many" ? Math.max(3, Math.round(w / pitch)) : rows;
  return Array.from({ length: passes }, (_, i) => {
    const place = order === "counter" ? passes - 1 - i : i;
    const x = core.x + place * (w + roomBetween(layout, frame));
    return {
      box: { ...core, x, w },
      rises: next === "same way" || i % 2 === 0,
      xs: shares(x, w, channels),
    };
  });
}

/** Water across the air. */
export function acrossHoses(layout: Across, frame: Frame): Hoses {
  const { core, tank, hose } = frame;
  const drawn = sketch();
  const banks = banksOf(layout, frame);
  const bundle = isBundle(layout);
  const isCounter = layout.order === "counter";
  addAir(drawn, layout, frame, banks);

  const edge = (isTop: boolean) => (isTop ? core.y : core.y + core.h);
  const outside = (isTop: boolean, by: number) => edge(isTop) + (isTop ? -by : by);
  const level = (isTop: boolean) => outside(isTop, tank / 2);
  const addTank = (x: number, w: number, isTop: boolean) =>
    drawn.tanks.push({ x: x + 2, y: isTop ? core.y - tank : core.y + core.h, w: w - 4, h: tank });
  const spread = (xs: readonly number[], isTop: boolean) => {
    if (xs.length > 1) drawn.water.push(xs.map((x) => [x, level(isTop)]));
  };

  banks.forEach(({ box, rises, xs }, i) => {
    const isFirst = i === 0;
    const after = banks[i + 1];
    const from = bundle && !isFirst ? edge(!rises) : level(!rises);
    const to = bundle && after ? edge(rises) : level(rises);
    drawn.passes.push({ pass: i + 1, box, runs: rises ? up : down });
    for (const x of xs) {
      drawn.water.push([
        [x, from],
        [x, to],
      ]);
      drawn.waterTips.push({
        at: [x, core.y + core.h / 2 + (rises ? -4 : 4)],
        to: rises ? up : down,
      });
    }
    if (isFirst) {
      addTank(box.x, box.w, false);
      spread(xs, false);
      const at: Point = [middle(box), core.y + core.h + tank];
      const inside: Point = [middle(box), level(false)];
      drawn.water.push([at, inside]);
      addHose(drawn, hose, { at, side: "bottom", leads: "in", word: isCounter ? "right" : "left" });
    }
    if (!after) {
      addTank(box.x, box.w, rises);
      spread(xs, rises);
      const at: Point = [middle(box), outside(rises, tank)];
      drawn.water.push([[middle(box), level(rises)], at]);
      const side = rises ? "top" : "bottom";
      const word = isCounter && banks.length > 1 ? "left" : "right";
      addHose(drawn, hose, { at, side, leads: "out", word });
      return;
    }

    const targets = layout.turn === "inverted" ? [...after.xs].reverse() : after.xs;
    const first = Math.min(box.x, after.box.x);
    if (layout.next === "same way") {
      const ways = shares(first + box.w + 2, frame.gap - 4, bundle ? xs.length : 1);
      ways.forEach((x, k) => {
        const [start = 0, end = 0] = bundle ? [xs[k], targets[k]] : [middle(box), middle(after.box)];
        const over = outside(true, tank / 2 + (bundle ? 3 * k : 0));
        const under = outside(false, tank / 2 + (bundle ? 3 * k : 0));
        drawn.water.push([
          ...(bundle ? [[start, edge(true)] as const] : []),
          [start, over],
          [x, over],
          [x, under],
          [end, under],
          ...(bundle ? [[end, edge(false)] as const] : []),
        ]);
        drawn.waterTips.push({ at: [x, core.y + core.h / 2 + 4], to: down });
      });
      if (bundle) return;
      addTank(box.x, box.w, true);
      addTank(after.box.x, after.box.w, false);
      spread(xs, true);
      spread(after.xs, false);
    } else if (bundle) {
      xs.forEach((x, k) => {
        drawn.water.push(bend(x, targets[k] ?? x, edge(rises), rises ? "top" : "bottom"));
      });
    } else {
      addTank(first, 2 * box.w + roomBetween(layout, frame), rises);
      const columns = [...xs, ...after.xs].sort((a, b) => (isCounter ? b - a : a - b));
      drawn.water.push(columns.map((x) => [x, level(rises)]));
    }
  });
  return drawn;
}

/** The core, its fins, and where air is stirred. */
function addAir(drawn: Sketch, layout: Across, frame: Frame, banks: readonly Bank[]): void {
  const { core, gap } = frame;
  const isStirredBetween = layout.air === "remixed" && banks.length > 1;
  for (const body of isStirredBetween ? banks.map(({ box }) => box) : [core]) {
    drawn.cores.push(corners(body));
    if (layout.air !== "mixed") drawn.plates.push(...across(body, cuts(core.y, core.h, 6)));
  }
  const height = (share: number) => core.y + share * core.h;
  if (layout.air === "mixed")
    drawn.stirs.push([core.x + core.w / 3, height(0.3)], [core.x + (2 * core.w) / 3, height(0.7)]);
  for (const { box } of isStirredBetween ? banks : []) {
    if (box.x > core.x) drawn.stirs.push([box.x - gap / 2, height(0.28)], [box.x - gap / 2, height(0.72)]);
  }
  throughAir(drawn, shares(core.y, core.h, 3), core);
}
