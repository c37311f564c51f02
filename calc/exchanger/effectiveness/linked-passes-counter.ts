import { scaledBesselI0 } from "../../numerics/bessel.ts";
import { linearFixedPoint } from "../../numerics/linear-fixed-point.ts";
import { airLeaving, halfOf, type Leaving, waterLeaving } from "./bank-response.ts";

/** Of the span between the entering air and the entering water. */
const SETTLED = 1e-13;

/**
 * What comes through from one place of an inlet to one of the other stream's outlet, e^(-x - y) I0(2 sqrt(x y)): the chance
 * that two counts with the means x and y are equal. A row for each place on the air's way.
 */
function through(water: Leaving, air: Leaving): Float64Array {
  const columns = air.places.map(Math.sqrt);
  const kernel = new Float64Array(water.places.length * columns.length);
  let at = 0;
  for (const place of water.places) {
    const x = Math.sqrt(place);
    for (const y of columns) kernel[at++] = Math.exp(-((x - y) ** 2)) * scaledBesselI0(2 * x * y);
  }
  return kernel;
}

/**
 * Temperature effectiveness of the air in two banks of many channels, the water against the air, where each channel goes on
 * as itself: in the same place along the air (`identical`), or as far from the other end (`inverted`).
 *
 * Between the banks are two streams that nobody knows: the air, along the water's way, and the water, along the air's way.
 * Each is what reaches its place from the entering stream and from the other one, and they are found at the nodes of rules
 * of Gauss. Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed.
 *
 * @example linkedPassesCounter(3, 1, "identical") // 0.7167
 */
export function linkedPassesCounter(NTU: number, R: number, turn: "identical" | "inverted"): number {
  const bank = halfOf(NTU, R);
  const air = airLeaving(bank);
  const water = waterLeaving(bank);
  const kernel = through(water, air);
  const columns = air.change.length;
  const rows = water.change.length;
  const back = (i: number) => (turn === "inverted" ? i : rows - 1 - i);

  /** Water as it leaves the bank behind, by its place there. */
  const warmed = new Float64Array(rows);
  const warm = (lost: Float64Array) => {
    for (let i = 0; i < rows; i++) {
      let missing = 0;
      for (let j = 0; j < columns; j++)
        missing += (kernel[i * columns + j] as number) * (air.share[j] as number) * (lost[j] as number);
      warmed[i] = (water.change[i] as number) - bank.ofWater * missing;
    }
  };
  /** What the air has lost when it leaves the bank in front. */
  const lost = linearFixedPoint(
    (before, after) => {
      warm(before);
      after.set(air.change);
      for (let i = 0; i < rows; i++) {
        const brings = bank.ofAir * (water.share[i] as number) * (warmed[back(i)] as number);
        for (let j = 0; j < columns; j++)
          after[j] = (after[j] as number) - (kernel[i * columns + j] as number) * brings;
      }
    },
    columns,
    { tolerance: SETTLED },
  );
  // Counted on the stream of smaller capacity rate, rounding does not take it past the other one.
  if (R <= 1) return meanOfBoth(air, (j) => lost[j] as number);
  warm(lost);
  return meanOfBoth(water, (i) => warmed[back(i)] as number) / R;
}

/** How far a stream comes in two banks, the first of which takes it as far as `first`. */
function meanOfBoth({ share, change }: Leaving, first: (i: number) => number): number {
  let sum = 0;
  for (let i = 0; i < share.length; i++) {
    const second = change[i] as number;
    sum += (share[i] as number) * (second + (1 - second) * first(i));
  }
  return sum;
}
