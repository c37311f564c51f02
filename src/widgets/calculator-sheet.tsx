import { Fragment } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { UnitSystem } from "../../calc/quantity/kinds.ts";
import { readBarometer } from "../calculators/engine/barometer.ts";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import { type Entries, type Entry, inSystem, startEntries } from "../calculators/engine/entry.ts";
import { type Evaluation, evaluate, type Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { ChoiceRow } from "./choice.tsx";
import { FieldRow } from "./field.tsx";
import { DrawnPicture, picturesFor } from "./picture.tsx";
import { Results } from "./results.tsx";
import { change, restore, surroundings } from "./settings.ts";
import { Spoken } from "./spoken.tsx";
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
export function CalculatorSheet({
  calculator,
  title = calculator.title,
}: {
  calculator: Calculator;
  title?: string;
}) {
  const around = useSurroundings();
  const { barometer, fromElevation } = useSettings();
  const root = useRef<HTMLDivElement>(null);
  const [entries, setEntries] = useState(() => startEntries(calculator, "metric"));
  const [unread, setUnread] = useState<readonly string[]>([]);
  const good = useRef<Good | null>(null);
  /** Something here is the visitor's own doing. */
  const isTouched = useRef(false);
  /** What stands here was opened from a link or from the history. */
  const isOpened = useRef(false);
  /** The unit system that untouched fields were last written in. */
  const systemOf = useRef<UnitSystem>("metric");

  const evaluation = useMemo(() => evaluate(calculator, entries, around), [calculator, entries, around]);
  if (evaluation.outcome) good.current = { evaluation, outcome: evaluation.outcome, entries };
  const standing = good.current;
  const isStale = !evaluation.outcome;

  useLayoutEffect(() => {
    restore();
    const open = async () => {
      const isKept = history.state?.draft !== undefined;
      if (!isKept && location.hash.length > 1 && !mayBeLink(location.hash)) {
        // A jump to an anchor: the work stands, and is kept with the new place too.
        if (isTouched.current) (await import("./page-link.ts")).keepNow();
        return;
      }
      if (!isKept && location.hash.length <= 1 && !isOpened.current) return;
      const { openState } = await import("./page-link.ts");
      // What was typed while this was fetched is newer than any link.
      if (isTouched.current && !isKept && !isOpened.current) return;
      const found = openState(calculator);
      isOpened.current = found !== null;
      isTouched.current = isKept;
      systemOf.current = surroundings.get().system;
      setUnread(found?.unread ?? []);
      setEntries(found?.entries ?? startEntries(calculator, systemOf.current));
    };
    open();
    addEventListener("hashchange", open);
    return () => removeEventListener("hashchange", open);
  }, [calculator]);

  useEffect(() => {
    if (systemOf.current === around.system) return;
    systemOf.current = around.system;
    setEntries((now) => inSystem(calculator, now, around.system));
  }, [calculator, around.system]);
  useEffect(() => {
    // A reading set at the head of the page takes the place of what was typed here before.
    setEntries((now) => withoutOldBarometer(calculator, now, barometer));
  }, [calculator, barometer]);
  useEffect(() => {
    const isWorthKeeping = isTouched.current || isOpened.current;
    import("./page-link.ts").then(({ noteState }) => noteState(calculator, entries, isWorthKeeping));
  }, [calculator, entries, barometer, around.system]);
  useWorking(root, standing?.outcome ?? null, isStale, around);

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

  // A path is drawn over its fields, everything else under them.
  const pictures = standing ? picturesFor(calculator, standing.entries.choices) : [];
  const drawn = (over: boolean) =>
    standing &&
    pictures
      .filter((picture) => (picture.draw === "stations") === over)
      .map((picture, place) => (
        <DrawnPicture
          key={place}
          picture={picture}
          isStale={isStale}
          state={{ calculator, given: standing.evaluation.given, values: standing.outcome.values, around }}
        />
      ));

  return (
    <div ref={root}>
      <header>
        <h2 id={`${calculator.id}-title`}>{title}</h2>
        <p>{countOf(evaluation)}</p>
      </header>
      {unread.length > 0 && (
        <div class="aside note" role="status">
          <b>Note</b> {unread.join(" ")}
        </div>
      )}
      {drawn(true)}
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
                    arrangement={input.drawn?.(entries.choices)}
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
                  help={isFollowing ? followed(around.barometer.isExample, fromElevation) : input.help}
                  onEntry={(next) => setField(id, next)}
                />
              </Fragment>
            );
          })}
        </div>
        <div class="get">
          <p class="sub">You get</p>
          <Spoken calculator={calculator} evaluation={evaluation} choices={entries.choices} around={around} />
          {isStale && (
            <p class="msg stale">
              <b>Not current.</b>{" "}
              {evaluation.trouble ?? "The numbers below are from before the marked field was changed."}
            </p>
          )}
          {standing && (
            <Results
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
      {drawn(false)}
      <Tools
        shown={{ calculator, entries, outcome: evaluation.outcome, around }}
        onReset={() => {
          setUnread([]);
          set(startEntries(calculator, around.system));
        }}
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

/** Where a barometer comes from that was not typed into the calculator itself. */
function followed(isExample: boolean, fromElevation: boolean): string {
  if (isExample) return "An example. Set yours here, or at the head of the page.";
  return fromElevation
    ? "Worked out from the elevation at the head of the page."
    : "From the head of the page.";
}

/** Whether it is worth fetching what reads links: an anchor such as `#eq-2-4` is not. */
const mayBeLink = (hash: string): boolean => hash.includes("=");

function withoutOldBarometer(calculator: Calculator, entries: Entries, barometer: Entry): Entries {
  const id = Object.keys(calculator.inputs).find((key) => {
    const input = calculator.inputs[key];
    return input && !isChoice(input) && input.barometer;
  });
  const entry = id === undefined ? undefined : entries.fields[id];
  if (
    id === undefined ||
    !entry ||
    entry.typed === null ||
    (entry.typed === barometer.typed && entry.unit === barometer.unit)
  )
    return entries;
  return { ...entries, fields: { ...entries.fields, [id]: { ...entry, typed: null } } };
}
