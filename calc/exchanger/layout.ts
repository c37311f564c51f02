/**
 * How the streams of a cooler lie, for drawings and for the field solver. The air always goes straight through, from left
 * to right; `y` runs along the tubes.
 *
 * - `along`: both streams share one direction, against each other or together.
 * - `across`: the water crosses the air, in one pass or in several that lie one behind the other.
 * - `side by side`: two passes share the face, so that each half of the air meets one of them.
 * - `shell`: tubes in shells; the air is in the shells.
 */
export type Layout = Along | Across | SideBySide | Shell;

export interface Along {
  readonly kind: "along";
  readonly water: "against" | "with";
}

export interface Across {
  readonly kind: "across";
  readonly passes: number;
  /** Where the water enters: at the pass that the air meets last (counter) or first (parallel). One pass: either. */
  readonly order: "counter" | "parallel";
  /**
   * Channels one behind the other in each pass. One channel is mixed across the depth of its pass; `many` are as good as
   * unmixed. A number above one is for a single pass only, all rows fed side by side.
   */
  readonly rows: number | "many";
  /** Air kept apart throughout by the fins; mixed to its mean between the passes; or mixed everywhere. */
  readonly air: "unmixed" | "remixed" | "mixed";
  /** What becomes of the order of many channels where the water turns. One channel: `mixed`. */
  readonly turn: "mixed" | "identical" | "inverted";
  /** The next pass runs back (a return header) or the same way again (a pipe leads the water across). */
  readonly next: "back" | "same way";
}

export interface SideBySide {
  readonly kind: "side by side";
  readonly passes: 2;
  readonly rows: 1 | "many";
}

export interface Shell {
  readonly kind: "shell";
  readonly shells: number;
  readonly tubePasses: number;
}
