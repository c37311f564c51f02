import type { SI } from "../quantity/domain-error.ts";
import type { Standing } from "../relation/relation.ts";

/**
 * Speeds of seawater in tubes, m/s. Below `least` silt settles and growth takes hold; above `most` the water wears away the
 * film that protects the metal. `most` is a pair where makers differ. Missing where there is no such bound.
 */
export interface SeawaterVelocity {
  readonly id: string;
  readonly material: string;
  readonly least?: SI;
  readonly most?: readonly [from: SI, to: SI];
  /** Where the metal is no choice for open seawater. */
  readonly isForSeawater: boolean;
  readonly says: string;
}

/** For all of the table: makers differ, and there is no source to name. */
export const SEAWATER_VELOCITY_STANDING: Standing = "common practice";

/** By material, from those that bear least to those that bear most. */
export const seawaterVelocities: readonly SeawaterVelocity[] = [
  {
    id: "copper",
    material: "Copper",
    most: [0.9, 1.2],
    isForSeawater: false,
    says: "For fresh water. Seawater wears it away.",
  },
  {
    id: "aluminium",
    material: "Aluminium",
    most: [1.5, 2],
    isForSeawater: false,
    says: "Only in a closed loop with an inhibitor. Never wetted by the same seawater as copper or steel.",
  },
  {
    id: "admiralty-brass",
    material: "Admiralty brass",
    least: 1,
    most: [1.5, 2],
    isForSeawater: true,
    says: "For clean water at moderate speed.",
  },
  {
    id: "aluminium-brass",
    material: "Aluminium brass",
    least: 1,
    most: [2, 2.4],
    isForSeawater: true,
    says: "Sand and air bubbles at the inlets wear it first.",
  },
  {
    id: "cupronickel-90-10",
    material: "Copper-nickel 90/10",
    least: 0.9,
    most: [2, 2.5],
    isForSeawater: true,
    says: "In tubes up to 25 mm the lower bound, and better 1.8 m/s at the inlets. Water with sulphide in the first weeks harms the film for good.",
  },
  {
    id: "cupronickel-70-30",
    material: "Copper-nickel 70/30",
    least: 1,
    most: [3, 4],
    isForSeawater: true,
    says: "Bears more speed and more sand than 90/10.",
  },
  {
    id: "stainless-316l",
    material: "Stainless steel 316L",
    least: 1.5,
    isForSeawater: true,
    says: "Bears 3 m/s and more, and must never stand full: from 25 to 30 °C on pits begin under deposits and in gaps.",
  },
  {
    id: "titanium-2",
    material: "Titanium, grade 2",
    least: 1.5,
    isForSeawater: true,
    says: "Bears 5 m/s and more, where vibration is the limit. Growth takes hold below the least speed. Copper alloys joined to it corrode.",
  },
];
