import { Fragment } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { readBarometer } from "../calculators/engine/barometer.ts";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import { type Entries, type Entry, inSystem, startEntries } from "../calculators/engine/entry.ts";
import { type Evaluation, evaluate, type Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { ChoiceRow } from "./choice.tsx";
import { FieldRow } from "./field.tsx";
import { DrawnPicture, pictureFor } from "./picture.tsx";
import { Results } from "./results.tsx";
import { change, restore, surroundings } from "./settings.ts";
import { Tools } from "./tools.tsx";
import { useSettings, useSurroundings } from "./use-surroundings.ts";
import { useWorking } from "./use-working.ts";

/** The last state that had an outcome: it stays on the page, marked, while something typed cannot be used. */
interface Good {
  readonly evaluation: Evaluation;
  readonly outcome: Success;
  readonly entries: Entries;
}

/** Everything of a calculator but its working, which the build typesets beside it. */
export function CalculatorSheet({ calculator }: { calculator: Calculator }) {
  const around = useSurroundings();
  const { barometer } = useSettings();
  const root = useRef<HTMLDivElement>(null);
  const [entries, setEntries] = useState(() => startEntries(calculator, "metric"));
  const [unread, setUnread] = useState<readonly string[]>([]);
  const good = useRef<Good | null>(null);
  const isTouched = useRef(false);

  const evaluation = useMemo(() => evaluate(calculator, entries, around), [calculator, entries, around]);
  if (evaluation.outcome) good.current = { evaluation, outcome: evaluation.outcome, entries };
  const standing = good.current;
  const isStale = !evaluation.outcome;

  useLayoutEffect(() => {
    restore();
    const open = async () => {
      if (!mayBeLink(location.hash)) return;
      const { openLink } = await import("./page-link.ts");
      const opened = openLink(calculator);
      if (!opened) return;
      setUnread(opened.unread);
      setEntries(opened.entries ?? startEntries(calculator, surroundings.get().system));
    };
    open();
    addEventListener("hashchange", open);
    return () => removeEventListener("hashchange", open);
  }, [calculator]);

  useEffect(() => setEntries((now) => inSystem(calculator, now, around.system)), [calculator, around.system]);
  useEffect(() => {
    // A reading set at the head of the page takes the place of what was typed here before.
    setEntries((now) => withoutOldBarometer(calculator, now, barometer));
  }, [calculator, barometer]);
  useEffect(() => {
    // Tells the page's link what stands here, and the address too once a visitor has changed something.
    import("./page-link.ts").then(({ noteState }) => noteState(calculator, entries, isTouched.current));
  }, [calculator, entries]);
  useWorking(root, calculator, evaluation.outcome, around);

  const set = (next: Entries) => {
    isTouched.current = true;
    setEntries(next);
  };
  const setField = (id: string, entry: Entry) => {
    const field = calculator.inputs[id];
    if (field && !isChoice(field) && field.barometer) {
      if (entry.typed !== null && readBarometer(entry).ok) change({ barometer: entry, fromElevation: false });
    }
    set({ ...entries, fields: { ...entries.fields, [id]: entry } });
  };

  const picture = standing && pictureFor(calculator, standing.entries.choices);
  const drawn = standing && picture && (
    <DrawnPicture
      picture={picture}
      state={{ calculator, given: standing.evaluation.given, values: standing.outcome.values, around }}
    />
  );

  return (
    <div ref={root}>
      <header>
        <h2 id={`${calculator.id}-title`}>{calculator.title}</h2>
        <p>{countOf(evaluation)}</p>
      </header>
      {unread.length > 0 && (
        <div class="aside note" role="status">
          <b>Note</b> {unread.join(" ")}
        </div>
      )}
      {picture?.draw === "stations" && drawn}
      <div class="two">
        <div class="give">
          <p class="sub">You give</p>
          {Object.entries(calculator.inputs).map(([id, input]) => {
            if (!isShown(calculator, input.when, entries.choices)) return null;
            const name = `${calculator.id}-${id}`;
            const heading = input.heading && <h3 class="group">{input.heading}</h3>;
            if (isChoice(input)) {
              return (
                <Fragment key={id}>
                  {heading}
                  <ChoiceRow
                    id={name}
                    choice={input}
                    value={entries.choices[id] ?? input.start}
                    onChoose={(option) => set({ ...entries, choices: { ...entries.choices, [id]: option } })}
                  />
                </Fragment>
              );
            }
            const own = entries.fields[id];
            if (!own) return null;
            const isFollowing = input.barometer && own.typed === null;
            const entry = isFollowing ? { ...own, example: around.barometer.value } : own;
            return (
              <Fragment key={id}>
                {heading}
                <FieldRow
                  id={name}
                  field={input}
                  entry={entry}
                  isExample={own.typed === null && (!input.barometer || around.barometer.isExample)}
                  messages={evaluation.messages[id] ?? []}
                  around={around}
                  onEntry={(next) => setField(id, next)}
                />
              </Fragment>
            );
          })}
        </div>
        <div class="get" aria-live="polite">
          <p class="sub">You get</p>
          {isStale && (
            <p class="msg stale" role="status">
              <b>Not current.</b>{" "}
              {evaluation.trouble ?? "The numbers below are from before the marked field was changed."}
            </p>
          )}
          {standing && (
            <Results
              id={calculator.id}
              calculator={calculator}
              choices={standing.entries.choices}
              outcome={standing.outcome}
              isStale={isStale}
              isExample={evaluation.examples > 0}
              around={around}
            />
          )}
        </div>
      </div>
      {picture?.draw !== "stations" && drawn}
      <Tools
        shown={{ calculator, entries, outcome: evaluation.outcome, around }}
        onReset={() => set(startEntries(calculator, around.system))}
      />
    </div>
  );
}

/** How many of the fields in sight nobody has touched. */
function countOf({ examples, fields }: Evaluation): string {
  if (examples === 0) return "All values are yours";
  return examples === 1
    ? `1 of ${fields} is an example value`
    : `${examples} of ${fields} are example values`;
}

/** Whether it is worth fetching what reads links: an anchor such as `#eq-2-4` is not. */
const mayBeLink = (hash: string): boolean => hash.includes("=");

function withoutOldBarometer(calculator: Calculator, entries: Entries, barometer: Entry): Entries {
  const id = Object.keys(calculator.inputs).find((key) => {
    const input = calculator.inputs[key];
    return input && !isChoice(input) && input.barometer;
  });
  const entry = id === undefined ? undefined : entries.fields[id];
  if (id === undefined || !entry || entry.typed === null || entry.typed === barometer.typed) return entries;
  return { ...entries, fields: { ...entries.fields, [id]: { ...entry, typed: null } } };
}
