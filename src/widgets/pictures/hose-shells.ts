import type { Shell } from "../../../calc/exchanger/layout.ts";
import type { Box } from "./boxes.ts";
import {
  addHose,
  bend,
  cuts,
  down,
  type Frame,
  type Hoses,
  type Sketch,
  shares,
  sketch,
  up,
} from "./hose-parts.ts";
import type { Point } from "./path.ts";

/** How high the end of a shell is rounded. */
export const dome = 14;
const top = 8;

/** Air in shells, one after the other; water in tubes that start and end in the tanks below them. */
export function shellHoses({ shells, tubePasses }: Shell, { core, gap, tank, hose }: Frame): Hoses {
  const drawn = sketch();
  const columns = tubePasses / shells;
  const w = (core.w - gap * (shells - 1)) / shells;
  const foot = core.y + core.h;
  const level = foot + tank / 2;
  const turn = top + dome + 4;
  const tubes: Point[] = [];
  for (let n = shells; n >= 1; n--) {
    const shell: Box = { x: core.x + (n - 1) * (w + gap), y: top, w, h: foot - top };
    drawn.shells.push(shell);
    addTanks(drawn, shell, columns, tank);
    addShellAir(drawn, shell, n, { shells, gap, entry: core.x });
    const xs = shares(shell.x, w, columns).reverse();
    xs.forEach((x, i) => {
      const rises = i % 2 === 0;
      if (!rises) tubes.push(...bend(xs[i - 1] ?? x, x, turn, "top"));
      tubes.push([x, rises ? level : turn], [x, rises ? turn : level]);
      drawn.waterTips.push({ at: [x, (top + foot) / 2 + (rises ? 4 : 12)], to: rises ? up : down });
      drawn.passes.push({
        pass: (shells - n) * columns + i + 1,
        box: { ...shell, x: x - w / columns / 2, w: w / columns },
        runs: rises ? up : down,
      });
    });
  }
  const [[enters] = [0], [leaves] = [0]] = [tubes[0], tubes.at(-1)];
  const ends = [enters, leaves].map((x): Point => [x, foot + tank]) as [Point, Point];
  addHose(drawn, hose, { at: ends[0], side: "bottom", leads: "in", word: "right" });
  drawn.water.push([ends[0], ...tubes, ends[1]]);
  addHose(drawn, hose, { at: ends[1], side: "bottom", leads: "out", word: "left" });
  return drawn;
}

/** A tank for the water that comes, one for each turn at the foot, and one for the water that goes. */
function addTanks(drawn: Sketch, { x, y, w, h }: Box, columns: number, tank: number): void {
  const edges = [0, ...Array.from({ length: columns / 2 }, (_, i) => 2 * i + 1), columns];
  const column = w / columns;
  edges.slice(1).forEach((edge, i) => {
    const from = edges[i] ?? 0;
    drawn.tanks.push({ x: x + from * column, y: y + h, w: (edge - from) * column, h: tank });
  });
}

/** Air to and fro between baffles: down through the first shell, up through the second, and so on. */
function addShellAir(
  drawn: Sketch,
  { x, y, w, h }: Box,
  n: number,
  { shells, gap, entry }: { readonly shells: number; readonly gap: number; readonly entry: number },
): void {
  const falls = n % 2 === 1;
  cuts(y + dome, h - dome, 5).forEach((at, i) => {
    const isLeft = (i % 2 === 0) === falls;
    const from = isLeft ? x : x + w;
    drawn.plates.push([
      [from, at],
      [from + (isLeft ? 0.75 : -0.75) * w, at],
    ]);
  });
  const heights = [y + dome + 5, y + h - 5];
  const [enters = 0, leaves = 0] = falls ? heights : heights.reverse();
  if (n === 1)
    drawn.air.push([
      [4, enters],
      [x - 2, enters],
    ]);
  drawn.air.push([
    [x + w + 2, leaves],
    [n === shells ? x + w + entry - 6 : x + w + gap - 1, leaves],
  ]);
}
