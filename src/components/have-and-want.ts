import type { Way } from "./takes-and-gives.ts";

type Ways = Readonly<Record<string, readonly Way[]>>;

let ways: Promise<Ways> | undefined;

async function load(address: string): Promise<Ways> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${answer.status}`);
  return answer.json();
}

const most = 8;

function entry({ href, text, more }: Way): HTMLLIElement {
  const part = (name: string, words: string) => {
    const span = document.createElement("span");
    span.className = name;
    span.textContent = words;
    return span;
  };
  const link = document.createElement("a");
  link.href = href;
  link.append(
    part("line", text),
    part("dots", ""),
    part("end", more === 0 ? "nothing more to give" : `${more} more to give`),
  );
  const item = document.createElement("li");
  item.append(link);
  return item;
}

function summary(count: number, have: string, want: string): string {
  if (count === 0)
    return `No page takes the ${have} and gives the ${want}. It may take two: look for what lies between.`;
  if (count === 1) return `One page takes the ${have} and gives the ${want}.`;
  const first = count > most ? `; the ${most} that ask least` : ", the one that asks least first";
  return `${count} pages take the ${have} and give the ${want}${first}.`;
}

for (const form of document.querySelectorAll<HTMLFormElement>("[data-have-and-want]")) {
  const [have, want] = form.querySelectorAll("select");
  const says = form.querySelector("[role=status]");
  const list = form.querySelector("ul");
  const named = (select: HTMLSelectElement) => select.selectedOptions[0]?.text ?? "";
  const find = async () => {
    if (!have || !want || !says || !list) return;
    const chosen = `${have.value} ${want.value}`;
    list.replaceChildren();
    if (have.value === "" || want.value === "") {
      says.textContent = "";
      return;
    }
    if (have.value === want.value) {
      says.textContent = `You have the ${named(want)} already.`;
      return;
    }
    let found: readonly Way[];
    try {
      ways ??= load(form.dataset["haveAndWant"] ?? "");
      found = (await ways)[chosen] ?? [];
    } catch {
      ways = undefined;
      says.textContent = "The list could not be fetched. Every page stands below.";
      return;
    }
    // Something else may have been chosen meanwhile.
    if (chosen !== `${have.value} ${want.value}`) return;
    list.replaceChildren(...found.slice(0, most).map(entry));
    says.textContent = summary(found.length, named(have), named(want));
  };
  form.addEventListener("change", find);
  form.addEventListener("submit", (event) => event.preventDefault());
}
