import { useEffect, useLayoutEffect, useMemo, useReducer, useRef } from "preact/hooks";
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

/** Milliseconds that drawing may take at each key. What takes longer waits until typing rests, so that numbers come at once. */
const AT_ONCE = 12;
const REST = 120;

/** The state that is to be drawn: the present one, or where the last drawing of this picture was slow the last that rested. */
function useRested(picture: Picture<string, string>, state: State): State {
  const [, again] = useReducer((count: number) => count + 1, 0);
  const took = useRef(0);
  const drawn = useRef({ picture, state });
  if (took.current <= AT_ONCE || drawn.current.picture !== picture) drawn.current = { picture, state };
  const start = performance.now();
  const shown = drawn.current.state;
  useLayoutEffect(() => {
    took.current = performance.now() - start;
  }, [shown, picture]);
  useEffect(() => {
    if (shown === state) return;
    const timer = setTimeout(() => {
      drawn.current = { picture, state };
      again(undefined);
    }, REST);
    return () => clearTimeout(timer);
  }, [shown, picture, state]);
  return shown;
}

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
  const rested = useRested(picture, state);
  const drawing = useMemo(
    () => Drawer && <Drawer picture={picture} state={rested} />,
    [Drawer, picture, rested],
  );
  useEffect(() => {
    if (!drawers[picture.draw]) fetchDrawer(picture.draw).then(() => arrived(undefined));
  }, [picture.draw]);
  if (!drawing) {
    return <figure class="fig" dangerouslySetInnerHTML={{ __html: "" }} />;
  }
  return (
    <figure class={`fig ${isStale ? "is-stale" : ""}`}>
      {drawing}
      <figcaption>
        {isStale && <b>Not current. </b>}
        {!saysItself.has(picture.draw) && picture.title}
      </figcaption>
    </figure>
  );
}
