import { useEffect, useReducer } from "preact/hooks";
import type { Calculator, Picture } from "../calculators/engine/calculator.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { drawers, fetchDrawer, type State } from "./drawing.ts";

/** Pictures that hold their title among words of their own. */
const saysItself: ReadonlySet<string> = new Set(["units", "field"]);

type Choices = Readonly<Record<string, string>>;

/** What a calculator's definition asks to be drawn for the choices made, if anything. */
export const pictureFor = (calculator: Calculator, choices: Choices) =>
  calculator.pictures?.find((picture) => isShown(calculator, picture.when, choices)) ?? null;

/** All of them: that one, and what is drawn under it. */
export const picturesFor = (calculator: Calculator, choices: Choices): readonly Picture<string, string>[] =>
  [
    pictureFor(calculator, choices),
    calculator.also?.find((one) => isShown(calculator, one.when, choices)),
  ].filter((picture) => picture !== null && picture !== undefined);

/**
 * That picture for the state at hand.
 *
 * Until its drawer is fetched the figure that the build drew stays as it is: an element whose content was given as HTML
 * is left alone when the page wakes.
 */
export function DrawnPicture(props: { picture: Picture<string, string>; state: State; isStale: boolean }) {
  const { picture, state, isStale } = props;
  // A calculator may change from one kind of picture to another, so each arrival counts.
  const [, arrived] = useReducer((count: number) => count + 1, 0);
  const Drawer = drawers[picture.draw];
  useEffect(() => {
    if (!drawers[picture.draw]) fetchDrawer(picture.draw).then(() => arrived(undefined));
  }, [picture.draw]);
  if (!Drawer) {
    return <figure class="fig" dangerouslySetInnerHTML={{ __html: "" }} />;
  }
  return (
    <figure class={`fig ${isStale ? "is-stale" : ""}`}>
      <Drawer picture={picture} state={state} />
      <figcaption>
        {isStale && <b>Not current. </b>}
        {!saysItself.has(picture.draw) && picture.title}
      </figcaption>
    </figure>
  );
}
