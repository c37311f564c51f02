import type { Entry, Want } from "./entry.ts";

/** Typing into the field that is held ends the hold; another unit for it does not. */
export function releasedBy(want: Want, id: string, before: Entry | undefined, entry: Entry): Want {
  const isTyped = entry.typed !== before?.typed || entry.unit !== before?.unit;
  return want.input === id && isTyped ? { ...want, isHeld: false } : want;
}
