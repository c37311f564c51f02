import { SEAWATER_VELOCITY_STANDING, seawaterVelocities } from "../circuit/seawater-velocities.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { Coolant } from "./coolant.ts";

const inSeawater = seawaterVelocities.filter(({ isForSeawater }) => isForSeawater);

/** m/s. Slower than that silt settles in tubes of any metal. */
export const SILT_SPEED: SI = Math.min(...inSeawater.flatMap(({ least }) => least ?? []));
/** m/s. Faster than that the softest of the metals wears for certain. */
const WEAR_SPEED: SI = Math.min(...inSeawater.flatMap(({ most }) => most?.[1] ?? []));

/** K. Common practice, no source: hotter walls than 50 to 55 °C grow scale in seawater. */
const SCALING_WALL: SI = 328.15;

/** Notes on what seawater does to a cooler at its hot wall, K, and at its speed, m/s, where that is known. */
export function noteSeawater(
  coolant: Coolant,
  { T_wall, c_w }: { readonly T_wall: SI; readonly c_w?: SI | undefined },
  trace: Trace,
): void {
  if (coolant.kind !== "seawater") return;
  if (T_wall > SCALING_WALL)
    trace.note({
      about: "T_wall",
      says: `At the hot end the wall may be hotter than seawater bears: scale grows there. More or colder water cools it. Scale begins at about the bound (${SEAWATER_VELOCITY_STANDING}).`,
      limit: { value: SCALING_WALL, kind: "temperature" },
    });
  if (c_w === undefined) return;
  if (c_w < SILT_SPEED)
    trace.note({
      about: "c_w",
      says: `Seawater as slow as that lets silt settle, and growth takes hold. Tubes of any metal want more than the bound (${SEAWATER_VELOCITY_STANDING}).`,
      limit: { value: SILT_SPEED, kind: "speed" },
    });
  if (c_w > WEAR_SPEED)
    trace.note({
      about: "c_w",
      says: `Seawater as fast as that wears soft metals away, brass first. Some bear more than the bound: ask what the tubes are made of (${SEAWATER_VELOCITY_STANDING}).`,
      limit: { value: WEAR_SPEED, kind: "speed" },
    });
}
