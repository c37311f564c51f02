/** Some of the devices of a chain, by their places in it: bit i says that device i is fitted. */
export type DeviceSet = number;

export const isIn = (set: DeviceSet, i: number): boolean => (set >> i) % 2 === 1;

/** All of so many devices. */
export const everything = (count: number): DeviceSet => 2 ** count - 1;

/** Every set of so many devices, from none of them to all. */
export const setsOf = (count: number): readonly DeviceSet[] =>
  Array.from({ length: 2 ** count }, (_, set) => set);

/** What of a list stands in the set. */
export const thoseIn = <D>(devices: readonly D[], set: DeviceSet): readonly D[] =>
  devices.filter((_, i) => isIn(set, i));

/** What the engine with some of the devices is called in ids: `C1K1`, or `none`. */
export const outfitName = (ids: readonly string[]): string => ids.join("") || "none";
