// The page “Without a network”: what of the site is kept on this device, and all of it on demand.
import { atRoot } from "../widgets/at-root.ts";
import {
  type Edition,
  editionMark,
  everyPath,
  everythingMark,
  fetchFile,
  forEach,
  isCore,
  listPath,
  OtherEdition,
  type Shelf,
  shelf,
  shelfPrefix,
} from "./edition.ts";
import { registration } from "./register.ts";

interface Kept {
  readonly edition: Edition;
  readonly own: Shelf;
  readonly scope: string;
}

const part = <T extends HTMLElement>(name: string): T => {
  const found = document.querySelector<T>(`[data-keep="${name}"]`);
  if (!found) throw new Error(`the page has no ${name}`);
  return found;
};

const newer = "A newer edition was published meanwhile. Load this page again, then go on.";

const sayWhatFailed = (failure: unknown): string => {
  if (failure instanceof OtherEdition) return newer;
  if (failure instanceof DOMException && failure.name === "QuotaExceededError")
    return "This device gives no more room. What is kept so far stays.";
  return "The network stopped. What is kept so far stays, and the rest can be fetched later.";
};

const kB = (bytes: number): string => `${Math.ceil(bytes / 1000).toLocaleString("en")} kB`;
const sizeOf = ({ files }: Edition, paths: Iterable<string>): number =>
  [...paths].reduce((total, path) => total + (files[path]?.[1] ?? 0), 0);

/** Waits until the worker has what every page needs. False where it could not get it. */
async function isInstalled(found: ServiceWorkerRegistration): Promise<boolean> {
  const first = found.installing;
  if (found.active || !first) return found.active !== null;
  return new Promise((done) => {
    const look = () => {
      if (first.state === "activated") done(true);
      if (first.state === "redundant") done(false);
    };
    first.addEventListener("statechange", look);
    look();
  });
}

/** The shelf of this page's edition, or the sentence that says why there is none. */
async function openKept(): Promise<Kept | string> {
  const found = await registration;
  if (!found)
    return "This browser keeps nothing here. It needs an address that starts with https, and a window that is not private.";
  if (!(await isInstalled(found)))
    return "What every page needs could not be kept: the network stopped, or this device has no room. Load this page again to try once more.";
  const { scope } = found;
  const list = await (await fetch(atRoot(`/${listPath}`), { cache: "no-cache" })).text();
  const name = shelfPrefix(scope) + (await editionMark(list));
  if (!(await caches.has(name))) return newer;
  return { edition: JSON.parse(list), own: shelf(await caches.open(name), scope), scope };
}

/** The links to the pages that are kept. */
function showPages({ edition: { files }, scope }: Kept, paths: ReadonlySet<string>): void {
  const items = Object.entries(files).flatMap(([path, [, , title]]) => {
    if (!title || !paths.has(path)) return [];
    const link = document.createElement("a");
    link.href = scope + path;
    link.textContent = title;
    const item = document.createElement("li");
    item.append(link);
    return [item];
  });
  part("pages").replaceChildren(...items);
  part("count").textContent =
    items.length === 1
      ? "One page opens without a network."
      : `${items.length} pages open without a network.`;
}

async function run(kept: Kept): Promise<void> {
  const { edition, own, scope } = kept;
  const every = everyPath(edition);
  const whole = sizeOf(edition, every);
  const [start, stop, remove] = [
    part<HTMLButtonElement>("start"),
    part<HTMLButtonElement>("stop"),
    part<HTMLButtonElement>("remove"),
  ];
  const bar = part<HTMLProgressElement>("progress");
  const says = part("status");
  const amount = part("amount");
  let paths = new Set<string>();
  let isStopped = true;

  const showAmount = () => {
    const size = sizeOf(edition, paths);
    bar.max = whole;
    bar.value = size;
    amount.textContent = `${kB(size)} of ${kB(whole)}`;
  };
  const show = async () => {
    paths = new Set(await own.paths());
    const isWhole = every.every((path) => paths.has(path));
    const isUnderWay = !isStopped;
    const isBegun = [...paths].some((path) => edition.files[path] && !isCore(path));
    start.hidden = isWhole || isUnderWay;
    start.textContent = isBegun ? "Keep the rest too" : "Keep everything";
    stop.hidden = !isUnderWay;
    remove.hidden = isUnderWay || !isBegun;
    showAmount();
    showPages(kept, paths);
    return isWhole;
  };

  start.onclick = async () => {
    isStopped = false;
    await show();
    stop.focus();
    says.textContent = `Fetching ${kB(whole - sizeOf(edition, paths))}.`;
    // A browser that is asked so does not clear this away when it is short of room.
    navigator.storage?.persist?.().catch(() => {});
    let trouble = "";
    try {
      await forEach(every, async (path) => {
        const entry = edition.files[path];
        if (isStopped || !entry || paths.has(path)) return;
        await own.put(path, await fetchFile(scope, path, entry));
        paths.add(path);
        showAmount();
      });
    } catch (failure) {
      trouble = sayWhatFailed(failure);
    }
    isStopped = true;
    const isWhole = await show();
    if (isWhole) await own.mark(everythingMark);
    says.textContent = isWhole
      ? "Done. Everything is kept on this device, and a newer edition will be kept whole too."
      : trouble || "Stopped. What is kept so far stays.";
    (isWhole ? remove : start).focus();
  };
  stop.onclick = () => {
    isStopped = true;
  };
  remove.onclick = async () => {
    for (const path of await own.paths()) if (!isCore(path) && path !== listPath) await own.remove(path);
    await show();
    says.textContent = "Removed. What every page needs is still kept.";
    start.focus();
  };

  part("tools").hidden = false;
  if (await show()) says.textContent = "Everything is kept on this device.";
}

if (location.pathname !== atRoot("/offline/")) part("asked").hidden = false;
openKept()
  .catch(sayWhatFailed)
  .then((kept) => {
    if (typeof kept === "string") part("status").textContent = kept;
    else run(kept);
  });
