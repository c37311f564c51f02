import { entryKinds } from "../integrations/search-kinds.ts";

/** What of the search library's interface is used here. */
interface Pagefind {
  options(options: { readonly excerptLength: number }): Promise<void>;
  /** Counts of all filters; the counts of a search are there only once these were asked for. */
  filters(): Promise<Filters>;
  debouncedSearch(query: string, options: SearchOptions, milliseconds: number): Promise<Search | null>;
  search(query: string, options: SearchOptions): Promise<Search>;
}

interface SearchOptions {
  readonly filters: { readonly kind?: string | { readonly any: readonly string[] } };
}

interface Search {
  readonly results: readonly Result[];
  /** Counts of this search, whatever kind is chosen. */
  readonly totalFilters: Filters;
}

interface Result {
  readonly id: string;
  data(): Promise<Found>;
}

interface Filters {
  readonly kind?: Readonly<Record<string, number>>;
}

interface Section {
  readonly url: string;
  readonly title: string;
}

interface Found {
  readonly url: string;
  /** HTML in which the words found are marked. */
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly kind?: string };
  readonly sub_results: readonly Section[];
}

const mostPages = 12;
/** A word such as density names many symbols; more of them than this would push the pages out of sight. */
const mostEntries = 3;
const mostSections = 3;

// A variable, so that the build leaves the import alone: the index is written after it.
const library = "/pagefind/pagefind.js";

const part = <T extends Element>(selector: string): T => {
  const found = document.querySelector<T>(selector);
  if (!found) throw new Error(`the page has no ${selector}`);
  return found;
};

let pagefind: Promise<Pagefind> | undefined;

/** The kind of page that alone is wanted. */
let only: string | null = null;

function load(): Promise<Pagefind> {
  pagefind ??= (async () => {
    const loaded: Pagefind = await import(/* @vite-ignore */ library);
    await loaded.options({ excerptLength: 20 });
    await loaded.filters();
    return loaded;
  })();
  return pagefind;
}

/** Opens the search, with a query if there is one. */
export async function openFinder(query: string): Promise<void> {
  const dialog = part<HTMLDialogElement>("#finder");
  const field = part<HTMLInputElement>("#finder input");
  if (!dialog.open) {
    field.oninput = () => void find(field.value);
    dialog.onkeydown = walk;
    dialog.showModal();
  }
  field.focus();
  if (query !== "") field.value = query;
  field.select();
  await find(field.value);
}

const say = (text: string): void => {
  part("#finder [role=status]").textContent = text;
};

async function find(query: string): Promise<void> {
  const list = part("#finder ol");
  if (query.trim() === "") {
    list.replaceChildren();
    showKinds({});
    say("");
    void load().catch(() => {});
    return;
  }
  let pages: Found[];
  let count: number;
  let kinds: Readonly<Record<string, number>>;
  try {
    const filters = only ? { kind: only } : {};
    const library = await load();
    const search = await library.debouncedSearch(query, { filters }, 150);
    if (!search) return;
    kinds = search.totalFilters.kind ?? {};
    if (only && !kinds[only]) {
      // What was chosen for another query has nothing of this one.
      only = null;
      return find(query);
    }
    count = search.results.length;
    const entries = await library.search(query, { filters: { kind: { any: Object.values(entryKinds) } } });
    const chosen = only ? search.results : mixed(search.results, entries.results);
    const found = await Promise.all(chosen.slice(0, mostPages).map((result) => result.data()));
    pages = found.filter(({ excerpt }) => isMeant(query, excerpt));
    if (pages.length === 0) count = 0;
  } catch {
    pagefind = undefined;
    say("The search index could not be loaded. The list of numbers works without it.");
    return;
  }
  // A later letter may have been typed meanwhile.
  if (part<HTMLInputElement>("#finder input").value !== query) return;
  list.replaceChildren(...pages.map(entry));
  showKinds(kinds);
  say(summary(query, count));
  part<HTMLElement>("#finder").dataset["shown"] = query;
}

/** The best pages and the best few symbols and terms, in the order of the search; the other entries last. */
function mixed(results: readonly Result[], entries: readonly Result[]): readonly Result[] {
  const later = new Set(entries.slice(mostEntries).map(({ id }) => id));
  return [...results.filter(({ id }) => !later.has(id)), ...results.filter(({ id }) => later.has(id))];
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/**
 * Whether what was marked begins as something that was typed does. The library shortens a word that it does not know until
 * something begins with what is left, if only one letter.
 */
function isMeant(query: string, excerpt: string): boolean {
  const marks = [...excerpt.matchAll(/<mark>(.*?)<\/mark>/g)].flatMap(([, text = ""]) => wordsOf(text));
  const typed = wordsOf(query).map((word) => word.slice(0, 3));
  return marks.length === 0 || marks.some((mark) => typed.some((start) => mark.startsWith(start)));
}

/** The kinds that the search found, each with its count. One that is pressed alone is shown; pressed again, all are. */
function showKinds(kinds: Readonly<Record<string, number>>): void {
  const field = part<HTMLInputElement>("#finder input");
  const found = Object.entries(kinds).filter(([, count]) => count > 0);
  const buttons = found.map(([kind, count]) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = `${kind} ${count}`;
    button.setAttribute("aria-pressed", String(kind === only));
    button.onclick = async () => {
      only = kind === only ? null : kind;
      await find(field.value);
      // The row was made anew; who came by keyboard stays where they were.
      part<HTMLElement>("#finder .kinds").querySelectorAll("button")[buttons.indexOf(button)]?.focus();
    };
    return button;
  });
  part("#finder .kinds").replaceChildren(...(found.length > 1 || only ? buttons : []));
}

/** The arrows lead from the field through what was found, and back. */
function walk(event: KeyboardEvent): void {
  const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (step === 0) return;
  const stops = [
    part<HTMLElement>("#finder input"),
    ...document.querySelectorAll<HTMLElement>("#finder li > a"),
  ];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  const next = stops[Math.max(0, at + step)];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

function summary(query: string, count: number): string {
  if (count === 0) return `Nothing has “${query}”. Try another word, or fewer letters.`;
  if (count === 1) return "One page.";
  return count > mostPages ? `${count} pages, the best ${mostPages} first.` : `${count} pages.`;
}

function entry({ url, excerpt, meta, sub_results }: Found): HTMLLIElement {
  const item = document.createElement("li");
  const link = anchor({ url, title: meta.title ?? url });
  const kind = document.createElement("span");
  kind.className = "kind";
  kind.textContent = meta.kind ?? "";
  const text = document.createElement("p");
  text.append(...marked(excerpt));
  const sections = sub_results
    .filter((section) => section.url.includes("#") && section.url !== url)
    .slice(0, mostSections);
  const links = document.createElement("p");
  links.append(...sections.map(anchor));
  item.append(link, kind, text, ...(sections.length > 0 ? [links] : []));
  return item;
}

function anchor({ url, title }: Section): HTMLAnchorElement {
  const link = document.createElement("a");
  link.href = url;
  link.textContent = title;
  // Following a link within the open page does not leave the dialog by itself.
  link.onclick = () => part<HTMLDialogElement>("#finder").close();
  return link;
}

/** The text of an excerpt with its marks, and nothing else of its HTML. */
function marked(excerpt: string): Node[] {
  const { body } = new DOMParser().parseFromString(excerpt, "text/html");
  return [...body.childNodes].map((node) => {
    if (node.nodeName !== "MARK") return document.createTextNode(node.textContent ?? "");
    const mark = document.createElement("mark");
    mark.textContent = node.textContent;
    return mark;
  });
}
