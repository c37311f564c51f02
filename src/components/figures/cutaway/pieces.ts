import { core } from "./core.ts";
import type { Frame } from "./frame.ts";
import { headerInside, headerOutside, leftDuct, rightDuct } from "./headers.ts";
import type { Piece } from "./projection.ts";
import { nozzleTank, returnTank } from "./tanks.ts";

/** The cooler in pieces, in the order in which they cover one another. */
export function cutaway(frame: Frame): readonly Piece[] {
  return [
    ...headerInside(frame, true),
    ...headerOutside(frame, true),
    ...leftDuct(frame),
    ...nozzleTank(frame),
    ...headerInside(frame, false),
    ...core(frame),
    ...returnTank(frame),
    ...headerOutside(frame, false),
    ...rightDuct(frame),
  ];
}
