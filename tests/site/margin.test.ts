import { expect, test } from "vitest";
import { fileOf, read, unlikePages } from "./dist.ts";
import { newVisitor, open, sizes } from "./site.ts";

const withNotes = unlikePages.filter((path) => /class="[^"]*\bside\b/.test(read(fileOf(path)).toString()));
const wide = sizes.filter(({ width }) => width >= 820);

/** Each note in the margin that meets another part of the text, with that part. */
const meetings = () => {
  const main = document.querySelector("main");
  if (!main) return ["there is no text"];
  const says = (element: Element) => `“${element.textContent?.trim().slice(0, 40)}”`;
  // A note has no height of its own, so it reaches as far as what is in it.
  const reach = (element: Element) => {
    const range = document.createRange();
    range.selectNodeContents(element);
    return range.getBoundingClientRect();
  };
  const parts = [...main.querySelectorAll(".side, .fig, .sheet, .wide, .calculator, .scroll")]
    .filter((part) => part.checkVisibility())
    .map((part) => ({ part, box: part.matches(".side") ? reach(part) : part.getBoundingClientRect() }));
  return parts
    .filter(({ part }) => part.matches("main > .side"))
    .flatMap(({ part: note, box: a }) =>
      parts
        .filter(({ part }) => part !== note && !part.contains(note) && !note.contains(part))
        .filter(({ box: b }) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        .map(({ part, box }) => `${says(note)} meets ${says(part)} by ${Math.round(a.bottom - box.top)} px`),
    )
    .concat(
      parts
        .filter(
          ({ part, box }) => part.matches("main > .side") && box.bottom > main.getBoundingClientRect().bottom,
        )
        .map(({ part }) => `${says(part)} reaches below the text`),
    );
};

test("there are notes in the margin", () => expect(withNotes.length).toBeGreaterThan(0));

test.each(withNotes)("%s: no note in the margin meets what follows", async (path) => {
  const page = await newVisitor();
  await open(page, path);
  await page.evaluate(() => document.fonts.ready);
  for (const size of wide) {
    await page.setViewportSize(size);
    expect(await page.evaluate(meetings), `at ${size.width} px`).toEqual([]);
  }
  // The text of an A4 page at 96 px to the inch.
  await page.setViewportSize({ width: 660, height: 980 });
  await page.emulateMedia({ media: "print" });
  expect(await page.evaluate(meetings), "on paper").toEqual([]);
});
