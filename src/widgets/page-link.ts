import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Entries } from "../calculators/engine/entry.ts";
import { isLink, readLink, writeLink } from "../calculators/engine/link.ts";
import { own, type Settings, settings, surroundings, visiting } from "./settings.ts";

interface OnPage {
  readonly calculator: Calculator;
  entries: Entries;
}

/** The calculators that run on this page, in the order they woke. */
const running = new Map<string, OnPage>();

/** The address of this page with everything that stands in its calculators. */
export function pageLink(): string {
  const { barometer } = settings.get();
  const state = writeLink([...running.values()], { ...surroundings.get(), barometerEntry: barometer });
  return `${location.origin}${location.pathname}${location.search}#${state}`;
}

let pending: ReturnType<typeof setTimeout> | undefined;

/** Records a state, and puts it into the address once typing rests, so that a reload loses nothing. */
export function noteState(calculator: Calculator, entries: Entries, changed: boolean): void {
  running.set(calculator.id, { calculator, entries });
  if (!changed) return;
  clearTimeout(pending);
  pending = setTimeout(() => history.replaceState(history.state, "", pageLink()), 250);
}

const same = (a: Settings, b: Settings): boolean =>
  a.system === b.system &&
  a.barometer.typed === b.barometer.typed &&
  a.barometer.unit === b.barometer.unit &&
  a.barometer.example === b.barometer.example;

/** What the address holds for a calculator, or null. Brings the link's settings in, for this page only. */
export function openLink(
  calculator: Calculator,
): { entries: Entries | undefined; unread: readonly string[] } | null {
  if (!isLink(location.hash)) return null;
  const elsewhere = [...document.querySelectorAll<HTMLElement>("[data-calculator]")]
    .map((element) => element.dataset["calculator"] ?? "")
    .filter((id) => id !== calculator.id);
  const opened = readLink(location.hash, [calculator], elsewhere);
  const mine = own.get();
  const guest: Settings = {
    system: opened.system ?? mine.system,
    barometer: opened.barometer ?? mine.barometer,
    fromElevation: false,
  };
  visiting.set(same(guest, mine) ? null : guest);
  return { entries: opened.entries[calculator.id], unread: opened.unread };
}
