import { useLayoutEffect, useState } from "preact/hooks";
import type { Surroundings } from "../calculators/engine/entry.ts";
import { type Settings, settings, surroundings } from "./settings.ts";

// The first render must be the one that stands in the HTML, whatever this device has kept since.
const built = { settings: settings.get(), surroundings: surroundings.get() };

export function useSurroundings(): Surroundings {
  const [around, setAround] = useState(built.surroundings);
  useLayoutEffect(() => surroundings.subscribe((next) => setAround(() => next)), []);
  return around;
}

export function useSettings(): Settings {
  const [now, setNow] = useState(built.settings);
  useLayoutEffect(() => settings.subscribe((next) => setNow(() => next)), []);
  return now;
}
