import type { Calculator } from "../../calculators/engine/calculator.ts";
import { longestPair, mostPairs, type Together } from "../../calculators/engine/plus-minus.ts";
import { readPair } from "../../calculators/engine/uncertainty.ts";
import { ChoiceRow } from "../choice.tsx";
import type { Running } from "../use-calculator.ts";
import { nameOf } from "./names.ts";
import type { Told } from "./told.ts";

interface Props {
  calculator: Calculator;
  running: Running;
  told: Told | null;
  together: readonly Together[];
  onChange: (together: readonly Together[]) => void;
}

/** What is wrong with a pair, or that it does not count yet. */
function saysOf({ a, b, typed }: Together, all: readonly Together[], readings: object): string {
  const pair = readPair(typed);
  if ("says" in pair) return pair.says;
  if (a === b) return "Two different fields are wanted.";
  const same = all.filter((one) => (one.a === a && one.b === b) || (one.a === b && one.b === a));
  if (same.length > 1) return "This pair stands here twice. Only one of them can hold.";
  if (!Object.hasOwn(readings, a) || !Object.hasOwn(readings, b))
    return "It counts once both fields hold a ±.";
  return "";
}

/** Pairs of readings whose errors go together, and how much. */
export function Pairs({ calculator, running, told, together, onChange }: Props) {
  const readings = told?.uncertain.readings ?? {};
  const ids = [...new Set([...Object.keys(readings), ...together.flatMap(({ a, b }) => [a, b])])].filter(
    (id) => id !== "want",
  );
  const options = Object.fromEntries(ids.map((id) => [id, nameOf(calculator, running.entries, id)]));
  const change = (place: number, changes: Partial<Together>) =>
    onChange(together.map((one, i) => (i === place ? { ...one, ...changes } : one)));
  const name = (place: number) => `${calculator.id}-pm-pair-${place}`;
  const [a = "", b = ""] = ids;
  return (
    <details class="folded" open={together.length > 0}>
      <summary>Errors that go together</summary>
      <p class="msg">
        Two thermometers on one reference are wrong together. 1 says wholly, 0 not at all, −1 wholly and the
        other way.
      </p>
      {together.map((pair, place) => {
        const says = saysOf(pair, together, readings);
        const isInvalid = says !== "" && !says.startsWith("It counts");
        return (
          // A pair has no name but its place.
          <fieldset class="pair" key={place}>
            <legend>Pair {place + 1}</legend>
            <ChoiceRow
              id={`${name(place)}-a`}
              choice={{ label: "This field", options, start: "", help: "" }}
              value={pair.a}
              onChoose={(id) => change(place, { a: id })}
            />
            <ChoiceRow
              id={`${name(place)}-b`}
              choice={{ label: "with this one", options, start: "", help: "" }}
              value={pair.b}
              onChoose={(id) => change(place, { b: id })}
            />
            <div class={`field${isInvalid ? " is-invalid" : ""}`}>
              <label for={`${name(place)}-r`}>Correlation, −1 to 1</label>
              <div class="entry">
                <input
                  id={`${name(place)}-r`}
                  type="text"
                  autocomplete="off"
                  spellcheck={false}
                  maxLength={longestPair}
                  value={pair.typed}
                  aria-invalid={isInvalid}
                  aria-describedby={says ? `${name(place)}-msg` : undefined}
                  onInput={(event) => change(place, { typed: event.currentTarget.value })}
                />
              </div>
              {says && (
                <p class="msg" id={`${name(place)}-msg`}>
                  {says}
                </p>
              )}
            </div>
            <button
              type="button"
              class="btn quiet"
              onClick={() => onChange(together.filter((_, i) => i !== place))}
            >
              Take pair {place + 1} away
            </button>
          </fieldset>
        );
      })}
      {ids.length < 2 ? (
        <p class="msg">Once two fields hold a ±, they can be paired here.</p>
      ) : (
        together.length < mostPairs && (
          <button
            type="button"
            class="btn quiet"
            id={`${calculator.id}-pm-add`}
            onClick={() => onChange([...together, { a, b, typed: "1" }])}
          >
            Add a pair
          </button>
        )
      )}
    </details>
  );
}
