// Brings a calculator into a page that stands in a frame. Its sheet is taken from its own page, without the working: drawn
// a second time, the sheets of all calculators would be a twentieth of the site.
import { atRoot } from "../widgets/at-root.ts";

async function bring(place: HTMLElement): Promise<void> {
  const id = place.dataset["embed"];
  const answer = await fetch(atRoot(`/numbers/${id}/`));
  if (!answer.ok) throw new Error(`${answer.status}`);
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const sheet = page.querySelector<HTMLElement>(`[data-calculator="${id}"]`);
  if (!sheet) throw new Error("no sheet");
  for (const part of sheet.querySelectorAll("noscript, .work")) part.remove();
  const here = new Set([...document.styleSheets].map(({ href }) => href));
  for (const link of page.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]'))
    if (!here.has(link.href)) document.head.append(document.adoptNode(link));
  place.replaceChildren(document.adoptNode(sheet));
  await import("../widgets/wake.ts");
}

for (const place of document.querySelectorAll<HTMLElement>("[data-embed]"))
  bring(place).catch(() => {
    place.textContent = "The calculator could not be fetched. Its own page is a link away.";
  });
