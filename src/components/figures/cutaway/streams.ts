import type { Tip } from "../../../widgets/pictures/arrows.ts";
import { r1 } from "../../../widgets/pictures/numbers.ts";
import { type Point, polyline } from "../../../widgets/pictures/path.ts";
import { type Frame, measures } from "./frame.ts";

/** Which way round the two water hoses are: in at the pass that the air meets last, or at the one that it meets first. */
export type Hoses = "right" | "swapped";

export interface Streams {
  readonly water: readonly string[];
  readonly waterTips: readonly Tip[];
  readonly air: readonly string[];
  readonly airTips: readonly Tip[];
}

/** Straight pieces with their corners rounded. */
function rounded(points: readonly Point[], radius: number): string {
  return points
    .map((at, i) => {
      const [before, after] = [points[i - 1], points[i + 1]];
      if (!before || !after) return `${i ? "L" : "M"}${r1(at[0])} ${r1(at[1])}`;
      const [a, b] = [towards(at, before, radius), towards(at, after, radius)];
      return `L${r1(a[0])} ${r1(a[1])}Q${r1(at[0])} ${r1(at[1])} ${r1(b[0])} ${r1(b[1])}`;
    })
    .join("");
}

function towards([x, y]: Point, [tx, ty]: Point, far: number): Point {
  const length = Math.hypot(tx - x, ty - y) || 1;
  return [x + (far * (tx - x)) / length, y + (far * (ty - y)) / length];
}

/** The way of the water through two tubes of each pass, and of the air from duct to duct. */
export function streams(frame: Frame, hoses: Hoses): Streams {
  const { core, tubes, header, duct, nozzle, width, isWide } = frame;
  const {
    left,
    right,
    middle,
    cavity,
    eaves,
    plateTop,
    plateFoot,
    nozzleAt,
    nozzleEnds,
    axis,
    mouths,
    ductEnds,
  } = measures(frame);
  const turn = hoses === "right" ? 1 : -1;

  // Two tubes of each pass have lines that lead into them and out of them: more would fill the tanks.
  const led = [tubes.count - 2, tubes.count - 3];
  const loops = led.map((column, i): Point[] => {
    const [a, b] = [left[column] ?? middle, right[column] ?? middle];
    const low = nozzleAt + (i ? 1 : -1) * nozzle.half * 0.45;
    const high = eaves + (i ? 0.6 : 0.27) * frame.returnTank;
    return [
      [cavity[1] - 2, low],
      [b, low],
      [b, high],
      [a, high],
      [a, low],
      [cavity[0] + 2, low],
    ];
  });
  const beside = [left, right].flatMap((columns) =>
    columns
      .filter((_, column) => !led.includes(column))
      .map((x): Point[] => [
        [x, plateFoot + 8],
        [x, plateTop - 8],
      ]),
  );
  const half = core.top + 0.45 * (core.foot - core.top);
  const inTubes = [
    ...right.map((x): Tip => ({ at: [x, half - 4 * turn], to: [0, -turn] })),
    ...left.map((x): Tip => ({ at: [x, half + 4 * turn], to: [0, turn] })),
  ];
  const inTanks = loops.flatMap(([, foot, over, across]): Tip[] =>
    foot && over && across
      ? [(foot[0] + cavity[1]) / 2, middle, (across[0] + cavity[0]) / 2].map((x, i) => ({
          at: [x - 4 * turn, i === 1 ? over[1] : foot[1]],
          to: [-turn, 0],
        }))
      : [],
  );
  const reach = isWide ? 92 : 60;
  const near: [number, number] = [nozzleEnds[0] - 9, nozzleEnds[1] + 7];
  const outer: [Point, Point] = [
    [near[0] - reach, nozzleAt],
    [near[1] + reach, nozzleAt],
  ];
  const hose = (i: 0 | 1): [string, Tip] => {
    const isTowards = (i === 1) === (turn === 1);
    const [from, to]: [Point, Point] = isTowards
      ? [outer[i], [near[i], nozzleAt]]
      : [[near[i], nozzleAt], outer[i]];
    const way = Math.sign(to[0] - from[0]);
    return [polyline([from, [to[0] - 8 * way, nozzleAt]]), { at: to, to: [way, 0] }];
  };
  const hoseLines = [hose(0), hose(1)];

  const spread = [-1, 0, 1].flatMap((k): [Point, Point][] => {
    const [small, large] = [axis + k * 0.45 * duct.half, axis + k * 0.25 * (core.foot - core.top)];
    return [
      [
        [mouths[0] + 0.2 * header, small],
        [core.left - 5, large],
      ],
      [
        [mouths[1] - header + (isWide ? 8 : -8), large],
        [mouths[1] - 0.4 * duct.half - 4, small],
      ],
    ];
  });
  const bulge = 0.36 * duct.half;
  const through: [Point, Point][] = [
    [
      [isWide ? 14 : 0, axis],
      [ductEnds[0] - bulge - 7, axis],
    ],
    [
      [ductEnds[1], axis],
      [isWide ? width - 14 : width, axis],
    ],
  ];
  const arrows = [...through, ...spread].map(([from, to]): [string, Tip] => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const way: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    return [polyline([from, [to[0] - 7 * way[0], to[1] - 7 * way[1]]]), { at: to, to: way }];
  });
  return {
    water: [
      ...loops.map((points) => rounded(points, 8)),
      ...beside.map(polyline),
      ...hoseLines.map(([d]) => d),
    ],
    waterTips: [...inTubes, ...inTanks, ...hoseLines.map(([, tip]) => tip)],
    air: arrows.map(([d]) => d),
    airTips: arrows.map(([, tip]) => tip),
  };
}
