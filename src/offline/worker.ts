// The service worker: what was visited opens without a network.
//
// Editions never mix. Each worker belongs to one edition, and has one shelf of files of that edition only: by their names,
// or by the marks of their content. A page from the shelf gets its other files from there, or from the network if they
// are still of its edition; if not, it gets none. A page that the network has in another edition by now is passed on
// untouched, and so is all that it asks for afterwards. A newer worker fills its own shelf, and waits until the visitor
// takes it or has left; if anything is missing, its shelf goes and the old one stays.
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
import type { AskedFor, WorkerScope } from "./events.ts";
import { isToWorker } from "./messages.ts";

const worker = self as unknown as WorkerScope;
/** Put in by the build. */
const mark = "EDITION";
const { scope } = worker.registration;
const prefix = shelfPrefix(scope);
const searchStart = "pagefind/pagefind.js";

const openShelf = async (): Promise<Shelf> => shelf(await caches.open(prefix + mark), scope);

let known: Promise<Edition> | undefined;

/** The list of this edition, from the shelf; from the network where the browser has cleared its storage. */
function edition(): Promise<Edition> {
  known ??= (async () => {
    const own = await openShelf();
    const list = (await own.take(listPath)) ?? (await fetch(scope + listPath, { cache: "no-cache" }));
    const text = await list.text();
    if ((await editionMark(text)) !== mark) throw new OtherEdition(listPath);
    if (!(await own.has(listPath))) await own.put(listPath, new Response(text));
    return JSON.parse(text) as Edition;
  })();
  known.catch(() => {
    known = undefined;
  });
  return known;
}

/** What a file cannot do without: its own rules of formulas; the steps that a page fetches when its choices change; the whole index for the search. */
async function furtherThan(path: string, content: Response): Promise<readonly string[]> {
  const { files } = await edition();
  if (path === searchStart)
    return Object.keys(files).filter((one) => one.startsWith("pagefind/") && one !== searchStart);
  if (!content.headers.get("content-type")?.startsWith("text/html")) return [];
  const text = await content.text();
  const steps = text.matchAll(/ data-may-fetch="([^"]*)"/g).flatMap(([, paths = ""]) => paths.split(" "));
  const styles = text.matchAll(/ href="[^"]*?(formulas\/[^"]*\.css)"/g).map(([, path = ""]) => path);
  return [...steps, ...styles].filter((one) => files[one]);
}

/** Puts a file on the shelf, after what it cannot do without: what lies there works. */
async function keep(path: string, content?: Response): Promise<void> {
  const own = await openShelf();
  const entry = (await edition()).files[path];
  if (!entry || (await own.has(path))) return;
  const found = content ?? (await fetchFile(scope, path, entry));
  await forEach(await furtherThan(path, found.clone()), (further) => keep(further));
  await own.put(path, found);
}

/** The shelves of other editions that lie here. */
const otherShelves = async (): Promise<readonly string[]> =>
  (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== prefix + mark);

/** What older shelves hold and this edition has too. What did not change is copied. */
async function inherited(): Promise<ReadonlySet<string>> {
  const own = await openShelf();
  const now = await edition();
  const wanted = new Set<string>();
  for (const name of await otherShelves()) {
    const cache = await caches.open(name);
    const old = shelf(cache, scope);
    const list = await old.take(listPath);
    if (!list) continue;
    const { files } = (await list.json()) as Edition;
    for (const path of await old.paths()) {
      if (path === everythingMark) {
        for (const every of everyPath(now)) wanted.add(every);
        await own.copy(path, cache);
      }
      const [before] = files[path] ?? [];
      const [after] = now.files[path] ?? [];
      if (after === undefined) continue;
      wanted.add(path);
      if (before === after && !(await own.has(path))) await own.copy(path, cache);
    }
  }
  return wanted;
}

async function install(): Promise<void> {
  try {
    const { files } = await edition();
    const core = Object.keys(files).filter(isCore);
    await forEach(new Set([...core, ...(await inherited())]), (path) => keep(path));
  } catch (error) {
    await caches.delete(prefix + mark);
    throw error;
  }
}

/** Takes over: what was visited since this edition was fetched comes along as far as it can, then older shelves go. */
async function activate(): Promise<void> {
  const late = await inherited();
  await forEach(late, (path) => keep(path).catch(() => {}));
  for (const name of await otherShelves()) await caches.delete(name);
  await caches.delete(strangers());
}

// Pages of another edition, which the network gave. The browser may end and start the worker while one is open.
const strangers = (): string => `strangers ${prefix}`;
const strangerKey = (id: string): string => `${scope}client/${id}`;

async function noteStranger(id: string): Promise<void> {
  if (id !== "") await (await caches.open(strangers())).put(strangerKey(id), new Response());
}

const isStranger = async (id: string): Promise<boolean> =>
  id !== "" && (await (await caches.open(strangers())).match(strangerKey(id))) !== undefined;

const seekNewer = (): void => {
  worker.registration.update().catch(() => {});
};

/** A page that is asked for. */
async function visit(event: AskedFor, path: string): Promise<Response> {
  const { files } = await edition();
  const own = await openShelf();
  const kept = files[path] && (await own.take(path));
  if (kept) return kept;
  if (files[path])
    try {
      const found = await fetchFile(scope, path, files[path]);
      event.waitUntil(keep(path, found.clone()).catch(() => {}));
      return found;
    } catch (error) {
      if (error instanceof OtherEdition) seekNewer();
      else return (await withoutNetwork(own)) ?? Response.error();
    }
  try {
    const answer = await fetch(event.request);
    // What it is sent on to is asked for anew.
    if (answer.type !== "opaqueredirect") await noteStranger(event.resultingClientId);
    return answer;
  } catch {
    if (files[`${path}/`]) return Response.redirect(`${scope}${path}/`);
    return (await withoutNetwork(own)) ?? Response.error();
  }
}

/** The page that says what is kept, in the place of one that is not. */
async function withoutNetwork(own: Shelf): Promise<Response | undefined> {
  const page = await own.take("offline/");
  return page && new Response(page.body, { headers: page.headers, status: 503, statusText: "No network" });
}

/** A file that a page asks for. */
async function part(event: AskedFor, path: string): Promise<Response> {
  if (await isStranger(event.clientId)) {
    await noteStranger(event.resultingClientId);
    return fetch(event.request);
  }
  const own = await openShelf();
  if (path === listPath) {
    const list = await own.take(listPath);
    if (list) return list;
  }
  const entry = (await edition()).files[path];
  if (!entry) return fetch(event.request);
  const kept = await own.take(path);
  if (kept) return kept;
  try {
    const found = await fetchFile(scope, path, entry);
    event.waitUntil(keep(path, found.clone()).catch(() => {}));
    return found;
  } catch (error) {
    if (error instanceof OtherEdition) seekNewer();
    return Response.error();
  }
}

worker.addEventListener("install", (event) => event.waitUntil(install()));
worker.addEventListener("activate", (event) => event.waitUntil(activate()));

worker.addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  if (method !== "GET" || !url.startsWith(scope)) return;
  const path = url.slice(scope.length).replace(/[?#].*$/, "");
  const answer = mode === "navigate" ? visit(event, path) : part(event, path);
  // Without storage the worker is not in the way.
  event.respondWith(answer.catch(() => fetch(event.request)));
});

worker.addEventListener("message", (event) => {
  const { data } = event;
  if (!isToWorker(data)) return;
  if (data.take) event.waitUntil(worker.skipWaiting());
  if (data.keep) {
    const paths = data.keep.filter((url) => url.startsWith(scope)).map((url) => url.slice(scope.length));
    event.waitUntil(forEach(paths, (path) => keep(path).catch(() => {})));
  }
});
