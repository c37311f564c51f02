import { atom } from "nanostores";
import { useLayoutEffect, useState } from "preact/hooks";

/** What only a finger needs: keys beside a field, and the answer above the keyboard. */
type TouchParts = typeof import("./touch-parts.ts");

const parts = atom<TouchParts | null>(null);

/** Fetches them where one points with a finger. Without them a field works as on a desk. */
export function fetchTouchParts(): void {
  if (parts.get() === null && matchMedia("(pointer: coarse)").matches)
    import("./touch-parts.ts").then(
      (fetched) => fetched.dressed.then(() => parts.set(fetched)),
      () => {},
    );
}

/** They, once fetched. The first render must be the one that stands in the HTML. */
export function useTouchParts(): TouchParts | null {
  const [now, setNow] = useState<TouchParts | null>(null);
  useLayoutEffect(() => parts.subscribe((next) => setNow(next)), []);
  return now;
}
