import { atom, computed } from "nanostores";
import type { SI } from "../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../calc/quantity/kinds.ts";
import { exampleBarometer, exampleEntry, readBarometer } from "../calculators/engine/barometer.ts";
import type { Entry, Surroundings } from "../calculators/engine/entry.ts";

export interface Settings {
  readonly system: UnitSystem;
  readonly barometer: Entry;
  /** Set from an elevation instead of an instrument. */
  readonly fromElevation: boolean;
}

const initial: Settings = { system: "metric", barometer: exampleEntry("metric"), fromElevation: false };
const shelf = "charge-air:settings";

/** The visitor's own settings, kept on the device. */
export const own = atom<Settings>(initial);

/** Settings that a link brought: they hold for the page, and never touch the visitor's own. */
export const visiting = atom<Settings | null>(null);

export const settings = computed([own, visiting], (mine, guest) => guest ?? mine);

export const surroundings = computed(settings, ({ system, barometer }): Surroundings => {
  const reading = readBarometer(barometer);
  const value: SI = reading.ok ? reading.value : exampleBarometer;
  const within = reading.ok ? reading.within : undefined;
  return { system, barometer: { value, isExample: barometer.typed === null, within } };
});

const isSettings = (x: unknown): x is Settings => {
  const { system, barometer, fromElevation } = (x ?? {}) as Partial<Settings>;
  return (
    (system === "metric" || system === "us") &&
    typeof fromElevation === "boolean" &&
    typeof barometer?.unit === "string" &&
    typeof barometer.shown === "string" &&
    typeof barometer.example === "number" &&
    (barometer.typed === null || typeof barometer.typed === "string") &&
    readBarometer(barometer).ok
  );
};

let isRestored = false;

/** Takes what was kept on this device, once a page. Anything else that lies there is left alone. */
export function restore(): void {
  if (isRestored) return;
  isRestored = true;
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(shelf) ?? "null");
    if (isSettings(kept)) own.set(kept);
  } catch {
    // Storage that is closed or holds something else: the examples stand.
  }
}

/** Changes settings: those of the link while one is open, else the visitor's own. */
export function change(changes: Partial<Settings>): void {
  const guest = visiting.get();
  if (guest) {
    visiting.set({ ...guest, ...changes });
    return;
  }
  keep({ ...own.get(), ...changes });
}

/** Makes settings the visitor's own, and ends what a link brought. */
export function keep(next: Settings): void {
  own.set(next);
  visiting.set(null);
  try {
    localStorage.setItem(shelf, JSON.stringify(next));
  } catch {
    // Without storage they hold until the page is left.
  }
}

/** Changes the unit system; a barometer nobody has set follows it. */
export function changeSystem(system: UnitSystem): void {
  const now = settings.get();
  change({ system, barometer: now.barometer.typed === null ? exampleEntry(system) : now.barometer });
}
