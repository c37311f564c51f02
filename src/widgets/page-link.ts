import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Entries } from "../calculators/engine/entry.ts";
import { isLink, writeLink } from "../calculators/engine/link.ts";
import { readLink } from "../calculators/engine/read-link.ts";
import { atRoot } from "./at-root.ts";
import { own, type Settings, settings, surroundings, visiting } from "./settings.ts";

/** The calculators that run on this page, in the order they woke. */
const running = new Map<string, { readonly calculator: Calculator; readonly entries: Entries }>();

/** What stands in the page's calculators, as the part of an address after `#`; a draft holds what is out of sight too. */
function pageState(how: { readonly isDraft?: boolean } = {}): string {
  const { barometer } = settings.get();
  return writeLink([...running.values()], { ...surroundings.get(), barometerEntry: barometer }, how);
}

/** The address of this page with everything that stands in its calculators; in a frame, of the page whose calculator it is. */
export function pageLink(): string {
  const whole = document.querySelector<HTMLElement>("[data-embed]")?.dataset["embed"];
  return `${location.origin}${whole ?? location.pathname + location.search}#${pageState()}`;
}

/** The address of a calculator alone, to be framed, with what stands in it. */
export const frameLink = ({ id }: Calculator): string =>
  `${location.origin}${atRoot(`/embed/${id}/`)}#${pageState()}`;

/**
 * What this tab's history keeps of a page beside its address: the visitor's own work, so that a reload, or a jump to an
 * anchor, loses nothing. `isGuest` says that barometer and units came with a link.
 */
interface Draft {
  readonly state: string;
  readonly isGuest: boolean;
}

function draft(): Draft | null {
  const kept: unknown = history.state?.draft;
  return kept && typeof (kept as Draft).state === "string" ? (kept as Draft) : null;
}

function keepDraft(): void {
  const isAnchor = location.hash.length > 1 && !isLink(location.hash);
  const kept: Draft = { state: pageState({ isDraft: true }), isGuest: visiting.get() !== null };
  // An anchor that was jumped to stays in sight in the address; the work is kept beside it.
  try {
    const state = isAnchor ? location.href : `#${pageState()}`;
    history.replaceState({ ...history.state, draft: kept }, "", state);
  } catch {
    // A frame in a sandbox may have no history of its own: the work stands until it is left.
  }
}

let pending: ReturnType<typeof setTimeout> | undefined;

/** Records a state, and keeps it with the page once typing rests. */
export function noteState(calculator: Calculator, entries: Entries, isWorthKeeping: boolean): void {
  running.set(calculator.id, { calculator, entries });
  if (!isWorthKeeping) return;
  clearTimeout(pending);
  pending = setTimeout(keepDraft, 250);
}

/** Keeps the work that stands on the page at once: after a jump to an anchor made a new entry in the history. */
export function keepNow(): void {
  if (running.size > 0) keepDraft();
}

const same = (a: Settings, b: Settings): boolean =>
  a.system === b.system &&
  a.barometer.typed === b.barometer.typed &&
  a.barometer.unit === b.barometer.unit &&
  a.barometer.example === b.barometer.example;

/** What was found for a calculator: where nothing was, the page is as nobody has touched it. */
export interface Found {
  readonly entries: Entries | undefined;
  readonly unread: readonly string[];
}

/**
 * What this page's history or its address holds for a calculator, or null. A link's barometer and units are brought in
 * for this page only.
 */
export function openState(calculator: Calculator): Found | null {
  const kept = draft();
  const text = kept?.state ?? (isLink(location.hash) ? location.hash : null);
  if (text === null) {
    visiting.set(null);
    return null;
  }
  const elsewhere = [...document.querySelectorAll<HTMLElement>("[data-calculator]")]
    .map((element) => element.dataset["calculator"] ?? "")
    .filter((id) => id !== calculator.id);
  const mine = own.get();
  const opened = readLink(text, [calculator], elsewhere, mine.system);
  const guest: Settings = {
    system: opened.system ?? mine.system,
    barometer: opened.barometer ?? mine.barometer,
    fromElevation: false,
  };
  const isOwn = kept !== null && !kept.isGuest;
  visiting.set(isOwn || same(guest, mine) ? null : guest);
  return { entries: opened.entries[calculator.id], unread: kept ? [] : opened.unread };
}
