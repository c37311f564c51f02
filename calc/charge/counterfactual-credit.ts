import type { SI } from "../quantity/domain-error.ts";
import { type DeviceSet, isIn, setsOf } from "./device-set.ts";

/** Means over the sets of one size: with the device and without it. */
export interface Place {
  readonly with: SI;
  readonly without: SI;
}

/**
 * What device `i` of `count` adds at each place in the order of fitting: for 0, 1, 2 … others there before it, the mean value of
 * all such sets with it and without it. The mean over the places is the mean over all orders of fitting, since in these each
 * place is as frequent as any other, and at one place each set.
 *
 * Source: Shapley 1953, the value of a player as the average over all orders.
 */
export function placesOf(count: number, i: number, value: (set: DeviceSet) => SI): readonly Place[] {
  const places = Array.from({ length: count }, () => ({ with: 0, without: 0, sets: 0 }));
  for (const set of setsOf(count)) {
    const place = places[sizeOf(set)];
    if (!place || isIn(set, i)) continue;
    place.with += value(set + 2 ** i);
    place.without += value(set);
    place.sets += 1;
  }
  return places.map((place) => ({ with: place.with / place.sets, without: place.without / place.sets }));
}

const sizeOf = (set: DeviceSet): number => set.toString(2).replaceAll("0", "").length;
