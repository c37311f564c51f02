// Brings a calculator into a page that stands in a frame. Its sheet is taken from its own page, without the working, and so
// are styles and script: drawn a second time, the sheets of all calculators would be a twentieth of the site.

import { bringStyles } from "../widgets/bring-styles.ts";

async function bring(place: HTMLElement): Promise<void> {
  const answer = await fetch(place.dataset["embed"] ?? "");
  if (!answer.ok) throw new Error(`${answer.status}`);
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const sheet = page.querySelector("[data-calculator]");
  if (!sheet) throw new Error("no sheet");
  for (const part of sheet.querySelectorAll("noscript, .work")) part.remove();
  bringStyles(page);
  place.replaceChildren(document.adoptNode(sheet));
  for (const { src } of page.querySelectorAll<HTMLScriptElement>("script[src]")) {
    const script = document.createElement("script");
    script.type = "module";
    script.src = src;
    document.head.append(script);
  }
}

for (const place of document.querySelectorAll<HTMLElement>("[data-embed]"))
  bring(place).catch(() => {
    place.textContent = "The calculator could not be fetched. Its own page is a link away.";
  });
