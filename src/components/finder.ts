/** What of the search library's interface is used here. */
interface Pagefind {
  options(options: { readonly excerptLength: number }): Promise<void>;
  debouncedSearch(
    query: string,
    options: object,
    milliseconds: number,
  ): Promise<{ readonly results: readonly { data(): Promise<Found> }[] } | null>;
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
const mostSections = 3;

// A variable, so that the build leaves the import alone: the index is written after it.
const library = "/pagefind/pagefind.js";

const part = <T extends Element>(selector: string): T => {
  const found = document.querySelector<T>(selector);
  if (!found) throw new Error(`the page has no ${selector}`);
  return found;
};

let pagefind: Promise<Pagefind> | undefined;

function load(): Promise<Pagefind> {
  pagefind ??= (async () => {
    const loaded: Pagefind = await import(/* @vite-ignore */ library);
    await loaded.options({ excerptLength: 20 });
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
    say("");
    void load().catch(() => {});
    return;
  }
  let pages: Found[];
  let count: number;
  try {
    const search = await (await load()).debouncedSearch(query, {}, 150);
    if (!search) return;
    count = search.results.length;
    pages = await Promise.all(search.results.slice(0, mostPages).map((result) => result.data()));
  } catch {
    pagefind = undefined;
    say("The search index could not be loaded. The list of numbers works without it.");
    return;
  }
  // A later letter may have been typed meanwhile.
  if (part<HTMLInputElement>("#finder input").value !== query) return;
  list.replaceChildren(...pages.map(entry));
  say(summary(query, count));
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
  const sections = sub_results.filter((section) => section.url.includes("#")).slice(0, mostSections);
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
