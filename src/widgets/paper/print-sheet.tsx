import { h, render } from "preact";
import type { Step } from "../../../calc/relation/trace.ts";
import type { Shown } from "../exports/rows.ts";
import { pageLink } from "../page-link.ts";
import { settings } from "../settings.ts";
import { PaperFoot } from "./paper-foot.tsx";
import { fetchSources, numberSources } from "./sources.ts";

/** How long what has to be fetched is waited for, in ms. */
const PATIENCE = 5000;

/** Opens a working and waits until it has all steps of the state shown; false where they do not come. */
async function openWorking(working: HTMLDetailsElement, steps: readonly Step[]): Promise<boolean> {
  working.open = true;
  const end = performance.now() + PATIENCE;
  // The fold tells its steps to come in a turn of its own.
  for (;;) {
    await new Promise((go) => setTimeout(go, 30));
    const shown = [...working.querySelectorAll<HTMLElement>(".steps > li")];
    // A step whose formula did not come says so, and names no relation.
    const isUpToDate = shown.every(
      ({ dataset }, i) => (dataset["relation"] ?? steps[i]?.relation) === steps[i]?.relation,
    );
    if (shown.length === steps.length && isUpToDate) return true;
    if (performance.now() > end) return false;
  }
}

/**
 * Prints one calculator as a sheet of its own: inputs, results, pictures, the working opened, sources, barometer, and the
 * link as text and as a code. The page is as before once it is printed.
 */
export async function printSheet({ outcome, around }: Shown, sheet: HTMLElement): Promise<void> {
  const working = sheet.querySelector<HTMLDetailsElement>("details.work");
  const wasOpen = working?.open ?? false;
  const lines = fetchSources(AbortSignal.timeout(PATIENCE)).catch(() => null);
  const hasWorking = !working || !outcome || (await openWorking(working, outcome.steps));
  if (working && !hasWorking) working.open = false;
  const keys = working?.open ? numberSources(working) : [];
  const known = await lines;

  const foot = document.createElement("div");
  foot.className = "on-paper";
  sheet.append(foot);
  render(
    h(PaperFoot, {
      around,
      fromElevation: settings.get().fromElevation,
      link: pageLink(),
      printed: new Date(),
      sources: known && keys.map((key) => known[key] ?? key),
      hasWorking,
    }),
    foot,
  );
  const { classList } = document.documentElement;
  classList.add("one-sheet");
  sheet.classList.add("is-printed");
  addEventListener(
    "afterprint",
    () => {
      classList.remove("one-sheet");
      sheet.classList.remove("is-printed");
      foot.remove();
      if (working) working.open = wasOpen;
    },
    { once: true },
  );
  print();
}
