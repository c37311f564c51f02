// Nothing here is awaited at the top: the bundler would part the script of every page into twenty, which weigh 2 kB more.
import { atRoot } from "../widgets/at-root.ts";
import { tell } from "./messages.ts";

/** Where a browser gives pages a worker: not over plain http, nor in some private windows. */
async function register(): Promise<ServiceWorkerRegistration | null> {
  try {
    return (await navigator.serviceWorker.register(atRoot("/sw.js"))) ?? null;
  } catch {
    return null;
  }
}

/** The worker's registration, or null where there can be none: the site works without. */
export const registration: Promise<ServiceWorkerRegistration | null> = register();

/** A page that came without the worker tells it what to keep: itself, and each file once it has come. */
async function tellOfThisPage(): Promise<void> {
  const { active } = await navigator.serviceWorker.ready;
  if (!active) return;
  tell(active, { keep: [location.origin + location.pathname] });
  new PerformanceObserver((list) =>
    tell(active, { keep: list.getEntries().map(({ name }) => name.replace(/[?#].*$/, "")) }),
  ).observe({ type: "resource", buffered: true });
}

/** Announces an edition that is fetched and waits. */
async function announce(next: ServiceWorker | null): Promise<void> {
  if (next) (await import("./announce.ts")).announce(next);
}

function watch(found: ServiceWorkerRegistration): void {
  if (!navigator.serviceWorker.controller) {
    tellOfThisPage();
    return;
  }
  announce(found.waiting);
  found.addEventListener("updatefound", () => {
    const next = found.installing;
    next?.addEventListener("statechange", () => {
      if (next.state === "installed") announce(next);
    });
  });
  // Another edition has taken over, here or in another window: this page is of the old one.
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
}

registration.then((found) => found && watch(found));
// The page “Without a network”.
if (document.querySelector("[data-keep]")) import("./keep.ts");
