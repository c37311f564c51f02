import type { Calculator, Outcome, Picture } from "./calculator.ts";
import type { Given } from "./evaluate.ts";
import { conditionLeft, type View } from "./view.ts";

/** What a picture names. Only charts and fields are drawn of a part. */
function namedBy(picture: Picture<string, string>): readonly string[] | null {
  const ids = (() => {
    switch (picture.draw) {
      case "chart":
        return [
          picture.vary,
          picture.x,
          picture.y,
          picture.best?.at,
          ...picture.curves.map(({ y }) => y),
          ...(picture.bands ?? []).flatMap(({ from, to }) => [from, to]),
          ...(picture.bounds ?? []).map(({ at }) => at),
        ];
      case "field":
        return [picture.NTU, picture.R, picture.hot, picture.cold, picture.airOut, picture.waterOut];
      default:
        return null;
    }
  })();
  return ids?.filter((id) => id !== undefined) ?? null;
}

/** The picture with its condition met, and its arrangement known by choices that the view may not ask. */
function freed(picture: Picture<string, string>, all: (given: Given) => Given): Picture<string, string> {
  const { when: _, ...free } = picture;
  return free.draw === "field" ? { ...free, arrangement: (given) => free.arrangement(all(given)) } : free;
}

/**
 * The picture of the calculator that a view draws, if any, and the results that it names beside those in sight. `all`
 * completes what the view asks to what the calculator hears.
 */
export function narrowedPicture(
  calculator: Calculator,
  view: View,
  all: (given: Given) => Given,
): { readonly pictures?: Calculator["pictures"] & {}; readonly beside: Readonly<Record<string, Outcome>> } {
  const isKnown = (id: string) => view.fields.includes(id) || Object.hasOwn(calculator.results, id);
  for (const picture of view.isDrawn ? (calculator.pictures ?? []) : []) {
    const ids = namedBy(picture);
    const left = conditionLeft(calculator, view, picture.when);
    if (!ids?.every(isKnown) || !left || Object.keys(left).length > 0) continue;
    const beside = Object.entries(calculator.results)
      .filter(([id]) => ids.includes(id) && !view.fields.includes(id) && !view.results.includes(id))
      .map(([id, { when: _, heading: __, ...result }]) => [id, { ...result, inPicture: true as const }]);
    return { pictures: [freed(picture, all)], beside: Object.fromEntries(beside) };
  }
  return { beside: {} };
}
