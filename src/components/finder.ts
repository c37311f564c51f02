import {
  type Findings,
  type Found,
  loadSearch,
  mostPages,
  type Section,
  searchPages,
} from "./search-library.ts";

const mostSections = 3;

const part = <T extends Element>(selector: string): T => {
  const found = document.querySelector<T>(selector);
  if (!found) throw new Error(`the page has no ${selector}`);
  return found;
};

/** The kind of page that alone is wanted. */
let only: string | null = null;

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
    void loadSearch().catch(() => {});
    return;
  }
  let found: Findings | null;
  try {
    found = await searchPages(query, only);
  } catch {
    say("The search index could not be loaded. The list of numbers works without it.");
    return;
  }
  if (!found) return;
  if (only && !found.kinds[only]) {
    // What was chosen for another query has nothing of this one.
    only = null;
    return find(query);
  }
  // A later letter may have been typed meanwhile.
  if (part<HTMLInputElement>("#finder input").value !== query) return;
  list.replaceChildren(...found.pages.map(entry));
  showKinds(found.kinds);
  say(summary(query, found.count));
  part<HTMLElement>("#finder").dataset["shown"] = query;
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
