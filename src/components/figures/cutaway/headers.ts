import { type Point, polyline } from "../../../widgets/pictures/path.ts";
import { type Frame, measures } from "./frame.ts";
import { back, behind, cutEnd, face, highest, openPipe, type Piece, pipe, shape } from "./projection.ts";

/** The section of a header's wall above or below the axis, left or right of the core. */
function headerWall(frame: Frame, isLeft: boolean, isOver: boolean): Piece {
  const { core, wall, duct } = frame;
  const { ends, axis, flange, plateTop, mouths, middle } = measures(frame);
  const [mouth, end] = [mouths[0], ends[0]];
  const upperLeft: Point[] = [
    [mouth, axis - duct.half - wall],
    [end - flange, core.top - wall],
    [end - flange, plateTop],
    [end, plateTop],
    [end, core.top],
    [end - flange, core.top],
    [mouth, axis - duct.half],
  ];
  return {
    look: "body",
    d: shape(upperLeft.map(([x, y]): Point => [isLeft ? x : 2 * middle - x, isOver ? y : 2 * axis - y])),
    // Across the wall: along it, hatching would look like more walls.
    cut: isLeft === isOver ? 2 : 1,
  };
}

/** Where a header meets its flange, and its duct. */
function headerEnds(frame: Frame, isLeft: boolean) {
  const { ends, flange, mouths } = measures(frame);
  return isLeft
    ? { near: ends[0] - flange, mouth: mouths[0], flange: [ends[0] - flange, ends[0]] as const }
    : { near: ends[1] + flange, mouth: mouths[1], flange: [ends[1], ends[1] + flange] as const };
}

/** What is seen in a header through its cut: the fold at the rear of its floor. */
export function headerInside(frame: Frame, isLeft: boolean): readonly Piece[] {
  const { core, wall, duct, depth } = frame;
  const { axis, plateFoot } = measures(frame);
  const { near, mouth } = headerEnds(frame, isLeft);
  const edge = isLeft ? core.left : core.right;
  const r = duct.half + wall;
  const corner = behind([near, core.foot], depth);
  const onDuct = duct.half * Math.SQRT1_2;
  const start: Point = isLeft ? [core.left, corner[1]] : behind([core.right, core.foot], depth);
  return [
    {
      look: "gap",
      d: shape([
        [mouth, axis - r],
        [near, core.top - wall],
        [edge, core.top - wall],
        [edge, plateFoot],
        [near, plateFoot],
        [mouth, axis + r],
      ]),
    },
    { look: "thin", d: polyline([start, corner, behind([mouth, axis + onDuct], back * onDuct)]) },
  ];
}

/** The upper slope of a header, its flange, and its walls where they are cut. */
export function headerOutside(frame: Frame, isLeft: boolean): readonly Piece[] {
  const { core, wall, duct, depth } = frame;
  const { axis, plateTop } = measures(frame);
  const { near, mouth, flange } = headerEnds(frame, isLeft);
  const r = duct.half + wall;
  return [
    {
      look: "body",
      d: shape([
        [near, core.top - wall],
        behind([near, core.top - wall], depth),
        [mouth + highest[0] * r, axis + highest[1] * r],
        [mouth, axis - r],
      ]),
    },
    { look: "thin gap", d: face([flange[0], plateTop], [flange[1], plateTop], depth) },
    headerWall(frame, isLeft, true),
    headerWall(frame, isLeft, false),
  ];
}

export function leftDuct(frame: Frame): readonly Piece[] {
  const { wall, duct } = frame;
  const { axis, mouths, ductEnds } = measures(frame);
  return [
    { look: "body", d: pipe(ductEnds[0], mouths[0], axis, duct.half + wall, true) },
    { look: "body", d: cutEnd(mouths[0], axis, duct.half, wall), cut: 1 },
  ];
}

export function rightDuct(frame: Frame): readonly Piece[] {
  const { wall, duct } = frame;
  const { axis, mouths, ductEnds } = measures(frame);
  return openPipe(mouths[1], ductEnds[1], axis, duct.half, wall);
}
