import type { Along } from "../../../calc/exchanger/layout.ts";
import {
  across,
  addHose,
  corners,
  cuts,
  type Frame,
  type Hoses,
  left,
  middle,
  right,
  shares,
  sketch,
  throughAir,
} from "./hose-parts.ts";

/** Water along the air, in every second channel. */
export function alongHoses({ water }: Along, { core, hose }: Frame): Hoses {
  const drawn = sketch();
  const isAgainst = water === "against";
  const lanes = shares(core.y, core.h, 5);
  drawn.cores.push(corners(core));
  drawn.plates.push(...across(core, cuts(core.y, core.h, 5)));
  const foot = core.y + core.h;
  const ends = [core.x + 0.1 * core.w, core.x + 0.9 * core.w];
  const [enters = 0, leaves = 0] = isAgainst ? ends.reverse() : ends;
  const wet = lanes.filter((_, i) => i % 2 === 1);
  const [high = 0] = wet;
  const [inward, outward] = isAgainst ? (["right", "left"] as const) : (["left", "right"] as const);

  addHose(drawn, hose, { at: [enters, foot], side: "bottom", leads: "in", word: inward });
  drawn.water.push([
    [enters, foot],
    [enters, high],
  ]);
  for (const y of wet) {
    drawn.water.push([
      [enters, y],
      [leaves, y],
    ]);
    drawn.waterTips.push({ at: [middle(core) + (isAgainst ? -4 : 4), y], to: isAgainst ? left : right });
  }
  drawn.water.push([
    [leaves, high],
    [leaves, foot],
  ]);
  addHose(drawn, hose, { at: [leaves, foot], side: "bottom", leads: "out", word: outward });
  drawn.passes.push({ pass: 1, box: core, runs: isAgainst ? left : right });
  throughAir(
    drawn,
    lanes.filter((_, i) => i % 2 === 0),
    core,
  );
  return drawn;
}
