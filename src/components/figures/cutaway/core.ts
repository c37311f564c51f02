import { r1 } from "../../../widgets/pictures/numbers.ts";
import { polyline } from "../../../widgets/pictures/path.ts";
import { type Frame, measures } from "./frame.ts";
import { behind, face, type Piece, shape } from "./projection.ts";

/** Fins as lines that turn back along the face where the air leaves, tubes as bores between two thin walls. */
export function core(frame: Frame): readonly Piece[] {
  const { core, tubes, depth, pitch } = frame;
  const { left, right, ends, plateTop, plateFoot } = measures(frame);
  const bores = [...left, ...right].sort((a, b) => a - b);
  const count = Math.floor((core.foot - core.top - 1) / pitch);
  const heights = Array.from({ length: count }, (_, i) => core.top + (i + 1) * pitch);
  const rear = behind([core.right, core.foot], depth);
  const plate = (top: number, foot: number): string => {
    const edges = [ends[0], ...bores.flatMap((x) => [x - tubes.half, x + tubes.half]), ends[1]];
    return edges
      .flatMap((x, i) => {
        const to = edges[i + 1];
        if (i % 2 || to === undefined) return [];
        return [`M${r1(x)} ${top}H${r1(to)}V${foot}H${r1(x)}z`];
      })
      .join("");
  };
  return [
    {
      look: "body",
      d: shape([
        [core.left, core.top],
        [core.right, core.top],
        [core.right, core.foot],
        [core.left, core.foot],
      ]),
    },
    { look: "thin gap", d: face([core.right, core.foot], [core.right, core.top], depth) },
    {
      look: "thin",
      d: heights
        .map((y) => {
          const away = Math.min(depth, y - core.top);
          return `M${core.left} ${r1(y)}H${core.right}l${away} ${-away}`;
        })
        .join(""),
    },
    { look: "outline", d: polyline([rear, [rear[0], core.top]]) },
    {
      look: "body",
      d: bores
        .map((x) => `M${r1(x - tubes.half)} ${core.top}h${2 * tubes.half}V${core.foot}h${-2 * tubes.half}z`)
        .join(""),
    },
    { look: "body", d: plate(plateTop, core.top), cut: 2 },
    { look: "body", d: plate(core.foot, plateFoot), cut: 2 },
  ];
}
