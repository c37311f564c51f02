// What one edition of the site is: its files, how each is told from the same file of another edition, and the shelf in
// the browser's storage that holds what a visitor has of it. The build, the worker and the page “Without a network” share it.

/** The mark that tells a file's content, its size in bytes as it is sent and kept, and the title if it is a page. */
export type FileEntry = readonly [mark: string, size: number, title?: string];

export interface Edition {
  /** The mark of the worker's own code. */
  readonly worker: string;
  /** By path from the root of the site, without a slash before it; a page ends in one. */
  readonly files: Readonly<Record<string, FileEntry>>;
}

/** Where the list of the edition's files is served. */
export const listPath = "files.json";

/** Files whose names change with their content need no mark. */
export const isNamedByContent = (path: string): boolean =>
  /^(?:_astro|formulas|pagefind\/(?:filter|fragment|index))\//.test(path);

/** What every visitor has of an edition from the first visit on: what pages are drawn and run with, and three pages. */
export const isCore = (path: string): boolean =>
  /^(?:_astro\/.*|numbers\/|offline\/|quick\/ways\.json|icon\.svg|manifest\.webmanifest)?$/.test(path);

/** A mark of a content: 60 bits of its SHA-256, in ten letters. */
export async function markOf(content: BufferSource): Promise<string> {
  const bits = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  return btoa(String.fromCharCode(...bits.subarray(0, 8)))
    .slice(0, 10)
    .replaceAll("+", "-")
    .replaceAll("/", "_");
}

/** An edition by the text of its list. */
export const editionMark = (list: string): Promise<string> => markOf(new TextEncoder().encode(list));

/** Several sites may share one origin, so the names of their shelves begin with their own path. */
export const shelfPrefix = (scope: string): string => `charge-air ${new URL(scope).pathname} `;

/** The file that came is not of the edition: another one has been published. */
export class OtherEdition extends Error {}

/** Headers that describe the sending, and not what was sent. */
const ofSending = ["content-encoding", "content-length", "date", "transfer-encoding", "vary"];

/** Fetches a file of an edition. Throws an `OtherEdition` where the site has another one by now, a `TypeError` without network. */
export async function fetchFile(scope: string, path: string, [mark]: FileEntry): Promise<Response> {
  // What is named by its content may come from the browser's own store; anything else is asked for anew.
  const answer = await fetch(scope + path, mark === "" ? {} : { cache: "no-cache" });
  if (!answer.ok) throw new OtherEdition(`${path}: ${answer.status}`);
  const content = await answer.arrayBuffer();
  if (mark !== "" && (await markOf(content)) !== mark) throw new OtherEdition(path);
  const headers = new Headers(answer.headers);
  for (const name of ofSending) headers.delete(name);
  return new Response(content, { headers });
}

/** Files of one edition in the browser's storage, packed: the markup of formulas would take seven times the room. */
export interface Shelf {
  readonly has: (path: string) => Promise<boolean>;
  readonly take: (path: string) => Promise<Response | undefined>;
  readonly put: (path: string, content: Response) => Promise<void>;
  readonly remove: (path: string) => Promise<void>;
  /** Leaves a mark that is no file. */
  readonly mark: (name: string) => Promise<void>;
  /** Moves a copy of a file here from another shelf as it lies there. */
  readonly copy: (path: string, from: Cache) => Promise<void>;
  readonly paths: () => Promise<readonly string[]>;
}

export function shelf(cache: Cache, scope: string): Shelf {
  return {
    has: async (path) => (await cache.match(scope + path)) !== undefined,
    take: async (path) => {
      const kept = await cache.match(scope + path);
      return kept?.body
        ? new Response(kept.body.pipeThrough(new DecompressionStream("gzip")), { headers: kept.headers })
        : undefined;
    },
    put: async (path, content) => {
      const packed = content.body?.pipeThrough(new CompressionStream("gzip"));
      // A stream into the storage fails late where there is no room; what is whole fails at once.
      const whole = await new Response(packed).arrayBuffer();
      await cache.put(scope + path, new Response(whole, { headers: content.headers }));
    },
    remove: async (path) => {
      await cache.delete(scope + path);
    },
    mark: (name) => cache.put(scope + name, new Response()),
    copy: async (path, from) => {
      const kept = await from.match(scope + path);
      if (kept) await cache.put(scope + path, kept);
    },
    paths: async () => (await cache.keys()).map(({ url }) => url.slice(scope.length)),
  };
}

/** Lies on a shelf that holds every file, so that the next edition is fetched whole too. */
export const everythingMark = "everything";

/** Every file that stands in the list; a visitor asked for all of it. */
export const everyPath = ({ files }: Edition): readonly string[] => Object.keys(files);

const atOnce = 6;

/** Does something for each path, a few at once. The first that fails ends it, once those under way are done. */
export async function forEach(paths: Iterable<string>, act: (path: string) => Promise<void>): Promise<void> {
  const rest = paths[Symbol.iterator]();
  const failures: unknown[] = [];
  const line = async () => {
    for (let next = rest.next(); !next.done && failures.length === 0; next = rest.next())
      await act(next.value).catch((failure: unknown) => failures.push(failure));
  };
  await Promise.all(Array.from({ length: atOnce }, line));
  if (failures.length > 0) throw failures[0];
}
