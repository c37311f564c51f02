import type { SI } from "../../quantity/domain-error.ts";
import type { Standing } from "../../relation/relation.ts";

/**
 * What a style of valve usually has, fully open: its recovery factor, its modifier for the Reynolds number, and how it opens.
 * The maker's own figures come first.
 */
export interface ValveStyle {
  readonly id: string;
  readonly name: string;
  readonly F_L: SI;
  readonly F_d: SI;
  readonly characteristic: "linear" | "equal-percentage" | "quick-opening";
}

/** Typical values as those in the tables of IEC 60534-2-1, from memory. */
export const VALVE_STYLES_STANDING: Standing = "from memory";

/** From the one that chokes last to the one that chokes first. */
export const valveStyles: readonly ValveStyle[] = [
  { id: "needle", name: "Needle valve", F_L: 0.95, F_d: 0.7, characteristic: "linear" },
  {
    id: "globe",
    name: "Globe valve, contoured plug",
    F_L: 0.9,
    F_d: 0.46,
    characteristic: "equal-percentage",
  },
  { id: "angle", name: "Angle valve, flow to open", F_L: 0.9, F_d: 0.46, characteristic: "equal-percentage" },
  {
    id: "butterfly-60",
    name: "Butterfly valve, opened by 60°",
    F_L: 0.7,
    F_d: 0.5,
    characteristic: "equal-percentage",
  },
  {
    id: "segment-ball",
    name: "Ball segment valve",
    F_L: 0.6,
    F_d: 0.98,
    characteristic: "equal-percentage",
  },
  { id: "ball", name: "Ball valve, full bore", F_L: 0.6, F_d: 0.98, characteristic: "equal-percentage" },
];
