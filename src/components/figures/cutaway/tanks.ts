import { r1 } from "../../../widgets/pictures/numbers.ts";
import { type Point, polyline } from "../../../widgets/pictures/path.ts";
import { type Frame, measures } from "./frame.ts";
import { behind, cutEnd, face, lying, openPipe, type Piece, pipe, shape, upright } from "./projection.ts";

/** The tank over the core: the tube plate is its floor, and its roof rises to the vent. */
export function returnTank(frame: Frame): readonly Piece[] {
  const { tubes, row, depth, rise, wall } = frame;
  const { left, right, plateTop, ends, tank, cavity, flange, eaves, crown, middle } = measures(frame);
  const [a, b] = tank;
  const archTo = (to: number, y: number) => `Q${r1(middle)} ${r1(y - 2 * rise)} ${r1(to)} ${r1(y)}`;
  const top = eaves - wall;
  const rearLeft = behind([a, top], depth);
  const rearRight = behind([b, top], depth);
  const holes = Array.from({ length: tubes.rows }, (_, i) => i + 1).flatMap((i) =>
    [...left, ...right].map((x) => {
      const [hx, hy] = behind([x, plateTop], i * row);
      const r = tubes.half;
      return hx - r > cavity[1] ? "" : `M${r1(hx - r)} ${r1(hy)}${lying(r)}${2 * r} 0${lying(r)}${-2 * r} 0z`;
    }),
  );
  const rearFloor = behind([cavity[0], plateTop], depth);
  const ledge = plateTop - flange;
  return [
    { look: "thin gap", d: face([ends[0], ledge], [a, ledge], depth) },
    { look: "thin gap", d: face([b, ledge], [ends[1], ledge], depth) },
    { look: "thin gap", d: face([ends[1], ledge], [ends[1], plateTop], depth) },
    {
      look: "body",
      d: `M${a} ${top}${archTo(b, top)}V${plateTop}H${a}z`,
    },
    {
      look: "thin",
      d:
        polyline([[cavity[0], plateTop], rearFloor, [cavity[1], rearFloor[1]]]) +
        polyline([rearFloor, [rearFloor[0], eaves - 0.75 * rise]]),
    },
    { look: "thin", d: holes.join("") },
    { look: "body", d: face([b, top], [b, ledge], depth) },
    {
      look: "body",
      d: `M${a} ${top}${archTo(b, top)}L${r1(rearRight[0])} ${r1(rearRight[1])}Q${r1(middle + depth)} ${r1(top - 2 * rise - depth)} ${r1(rearLeft[0])} ${r1(rearLeft[1])}z`,
    },
    {
      look: "body",
      d: `M${ends[0]} ${plateTop}v${-flange}H${a}V${top}${archTo(b, top)}V${ledge}H${ends[1]}v${flange}H${cavity[1]}V${eaves}${archTo(cavity[0], eaves)}V${plateTop}z`,
      cut: 1,
    },
    ...bolts(frame, ledge, -1),
    { look: "body", d: `M${middle - 9} ${crown + 1}v-5h18v5z` },
    { look: "body", d: `M${middle - 6.5} ${crown - 4}v-9h13v9z` },
    { look: "thin", d: `M${middle - 2.5} ${crown - 4}v-9m5 0v9` },
  ];
}

/** The tank under the core: a partition parts its halves, each with a nozzle and a drain. */
export function nozzleTank(frame: Frame): readonly Piece[] {
  const { depth, wall, nozzle } = frame;
  const { middle, plateFoot, ends, tank, cavity, flange, floor, foot, nozzleAt, nozzleEnds, drains } =
    measures(frame);
  const [a, b] = tank;
  const ledge = plateFoot + flange;
  const half = wall / 2 + 0.5;
  const upper = (x: (at: number) => number) =>
    shape(
      [
        [ends[0], plateFoot],
        [cavity[0], plateFoot],
        [cavity[0], nozzleAt - nozzle.half],
        [a, nozzleAt - nozzle.half],
        [a, ledge],
        [ends[0], ledge],
      ].map(([px = 0, py = 0]): Point => [x(px), py]),
    );
  const hole = nozzleAt + nozzle.half;
  const floors = [cavity[0], middle + half].map((x): [Point, Point] => [
    [x, floor],
    behind([x, floor], depth),
  ]);
  const ceilings = [middle - half, cavity[1]];
  return [
    { look: "body", d: pipe(nozzleEnds[0], a, nozzleAt, nozzle.half + nozzle.wall, true) },
    { look: "body", d: cutEnd(a, nozzleAt, nozzle.half, nozzle.wall) },
    { look: "body", d: face([b, ledge], [b, foot], depth) },
    { look: "thin gap", d: face([ends[1], plateFoot], [ends[1], ledge], depth) },
    {
      look: "body",
      d: shape([
        [a, plateFoot],
        [b, plateFoot],
        [b, foot],
        [a, foot],
      ]),
    },
    {
      look: "thin",
      d:
        floors
          .map(
            ([front, rear], i) =>
              polyline([front, rear, [ceilings[i] ?? 0, rear[1]]]) + polyline([rear, [rear[0], plateFoot]]),
          )
          .join("") +
        `M${cavity[0]} ${r1(nozzleAt - nozzle.half)}${upright(nozzle.half)}1 ${cavity[0]} ${r1(hole)}`,
    },
    { look: "body", d: upper((x) => x) + upper((x) => 2 * middle - x), cut: 1 },
    {
      look: "body",
      d: shape([
        [a, hole],
        [cavity[0], hole],
        [cavity[0], floor],
        [middle - half, floor],
        [middle - half, plateFoot],
        [middle + half, plateFoot],
        [middle + half, floor],
        [cavity[1], floor],
        [cavity[1], hole],
        [b, hole],
        [b, foot],
        [a, foot],
      ]),
      cut: 1,
    },
    ...bolts(frame, ledge, 1),
    ...drains.flatMap((x): Piece[] => [
      { look: "body", d: `M${r1(x - 9)} ${foot}v5h18v-5z` },
      { look: "body", d: `M${r1(x - 6.5)} ${foot + 5}v8h13v-8z` },
      { look: "thin", d: `M${r1(x - 2.5)} ${foot + 5}v8m5 0v-8` },
    ]),
    ...openPipe(b, nozzleEnds[1], nozzleAt, nozzle.half, nozzle.wall),
  ];
}

/** Heads of the bolts at both ends of a flange. */
function bolts(frame: Frame, ledge: number, way: 1 | -1): readonly Piece[] {
  const { ends } = measures(frame);
  const out = frame.rim / 2;
  return [
    {
      look: "body",
      d: [ends[0] + out, ends[1] - out]
        .map((x) => `M${r1(x - 3.5)} ${ledge}v${4.5 * way}h7v${-4.5 * way}z`)
        .join(""),
    },
    {
      look: "thin",
      d: [ends[0] + out, ends[1] - out].map((x) => `M${r1(x)} ${ledge + 8 * way}v${-30 * way}`).join(""),
    },
  ];
}
