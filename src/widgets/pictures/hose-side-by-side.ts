import type { SideBySide } from "../../../calc/exchanger/layout.ts";
import type { Tip } from "./arrows.ts";
import type { Box } from "./boxes.ts";
import {
  addHose,
  corners,
  cuts,
  down,
  type Frame,
  type Hoses,
  middle,
  shares,
  sketch,
  up,
} from "./hose-parts.ts";
import type { Point } from "./path.ts";

/** The front of the core, in the small drawing; behind it lies the rest. */
const front: Box = { x: 66, y: 42, w: 60, h: 42 };
const depth: Point = [-30, -20];

/** A point of the front, moved back into the drawing: 1 is the whole way through the core. */
const back = ([x, y]: Point, share: number): Point => [x + depth[0] * share, y + depth[1] * share];
const away: Point = [depth[0] / Math.hypot(...depth), depth[1] / Math.hypot(...depth)];

/** Two passes that share the face, seen a little from above: the second stands behind the first. */
export function sideBySideHoses({ rows }: SideBySide, { pitch, hose }: Frame): Hoses {
  const drawn = sketch();
  const foot = front.y + front.h;
  const end = front.x + front.w;
  const leftTop: Point = [front.x, front.y];
  const leftFoot: Point = [front.x, foot];
  const rightTop: Point = [end, front.y];
  drawn.cores.push(
    corners(front),
    [leftTop, back(leftTop, 1), back(rightTop, 1), rightTop],
    [leftTop, back(leftTop, 1), back(leftFoot, 1), leftFoot],
  );
  drawn.bounds.push([rightTop, leftTop, leftFoot].map((at) => back(at, 0.5)));
  for (const y of cuts(front.y, front.h, 5))
    drawn.plates.push([[end, y], [front.x, y], back([front.x, y], 1)]);

  const at: Point = [middle(front), foot];
  addHose(drawn, hose, { at, side: "bottom", leads: "in", word: "right" });
  const xs = shares(front.x, front.w, rows === "many" ? Math.round(front.w / pitch) : 1);
  if (xs.length > 1) drawn.water.push(xs.map((x) => [x, foot - 2]));
  const turns = xs.map((x): Tip => ({ at: back([x, front.y], 0.8), to: away }));
  xs.forEach((x, i) => {
    drawn.water.push([[x, foot], [x, front.y], turns[i]?.at ?? [x, front.y]]);
    drawn.waterTips.push({ at: [x, front.y + front.h / 2 - 4], to: up });
  });
  drawn.waterTips.push(...turns);
  // The second pass runs down behind the first, and comes out of sight below.
  const [outlet] = back(at, 0.75);
  addHose(drawn, hose, { at: [outlet, foot + 1], side: "bottom", leads: "out", word: "left" });
  const [x, y] = back([front.x, front.y], 0.5);
  drawn.passes.push({ pass: 1, box: front, runs: up }, { pass: 2, box: { ...front, x, y }, runs: down });

  for (const share of [0.25, 0.75]) {
    const [entry, height] = back([front.x, front.y + front.h / 2], share);
    drawn.air.push([
      [4, height],
      [entry - 2, height],
    ]);
    drawn.air.push([
      [end + 5, height],
      [end + 40, height],
    ]);
  }
  return drawn;
}
