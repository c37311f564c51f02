import { useEffect, useMemo, useState } from "preact/hooks";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { kinds } from "../../calc/quantity/kinds.ts";
import type { Calculator, Field } from "../calculators/engine/calculator.ts";
import type { Entry, Surroundings } from "../calculators/engine/entry.ts";
import type { Given } from "../calculators/engine/evaluate.ts";
import { firstThatMatters } from "../calculators/engine/matters.ts";
import { listedResults, numbersInSight } from "../calculators/engine/shown.ts";
import { evenly, MOST_WHOLE, spanAround, sweep } from "../calculators/engine/sweep.ts";
import { ChoiceRow, optionsOf } from "./choice.tsx";
import { mark } from "./exports/csv-text.ts";
import { fileName, save } from "./exports/save.ts";
import { FieldRow } from "./field.tsx";
import type { PanelProps } from "./later-fold.tsx";
import type { Drawn } from "./sweep/shown-sweep.ts";
import { readSpan } from "./sweep/span-entry.ts";
import { SweepChart } from "./sweep/sweep-chart.tsx";
import { sweepCsv } from "./sweep/sweep-rows.ts";
import { SweepTable } from "./sweep/sweep-table.tsx";

/** Milliseconds that typing rests before the curves follow. */
const REST = 120;

/** Points of the curve that stands in the page: it is a first look, and each of them is sent. */
const FEW = 13;

/** More curves than this cannot be told apart. */
const MOST_CURVES = 5;

/** What is asked for; what is left out is chosen for the visitor. */
interface Asked {
  readonly along?: string;
  readonly result?: string;
  readonly beside?: readonly string[];
  readonly family?: string;
  readonly members?: number;
  /** What was typed as ends, by input: the sweep's, and the family's. */
  readonly ends: Readonly<Record<string, readonly [Entry, Entry]>>;
}

const NONE = "";

const endsOf = (field: Field, value: SI, { system }: Surroundings): readonly [Entry, Entry] => {
  const unit = kinds[field.kind][system];
  const entry = (example: SI): Entry => ({ typed: null, example, unit, shown: unit });
  const [from, to] = spanAround(field, value);
  return [entry(from), entry(to)];
};

interface Plan {
  readonly along: string;
  readonly result: string;
  readonly results: readonly string[];
  readonly span: readonly [SI, SI];
  readonly family: { readonly input: string; readonly values: readonly SI[] } | undefined;
}

const draw = (
  calculator: Calculator,
  given: Given,
  now: SI | undefined,
  plan: Plan,
  around: Surroundings,
  count?: number,
): Drawn => ({
  calculator,
  given,
  along: plan.along,
  span: plan.span,
  result: plan.result,
  family: plan.family?.input,
  swept: sweep({
    calculator,
    given,
    along: plan.along,
    from: plan.span[0],
    to: plan.span[1],
    results: plan.results,
    family: plan.family,
    ...(count !== undefined && { count }),
  }),
  now,
  around,
});

/** Results along an input: as the build draws them for the example, and as the visitor asks for them. */
export default function SweepPanel({ calculator, running }: PanelProps) {
  const { entries, evaluation, standing, around } = running;
  const [asked, setAsked] = useState<Asked>({ ends: {} });
  const [drawn, setDrawn] = useState<Drawn | null>(null);
  const results = listedResults(calculator, entries.choices);
  const inputs = numbersInSight(calculator, entries.choices);
  const isAmong = (rows: readonly (readonly [string, unknown])[], id: string | undefined): id is string =>
    rows.some(([one]) => one === id);
  const result = isAmong(results, asked.result) ? asked.result : results[0]?.[0];
  const given = (standing?.evaluation ?? evaluation).given;
  // Typing does not move the axis, and need not run the model to find it again.
  const first = useMemo(
    () =>
      result === undefined
        ? undefined
        : firstThatMatters(calculator, given, result, standing?.outcome.values[result]),
    [calculator, result, entries.choices],
  );
  const along = [asked.along, first, inputs[0]?.[0]].find((id) => isAmong(inputs, id));
  const field = along === undefined ? undefined : (calculator.inputs[along] as Field);

  const endsFor = (id: string): readonly [Entry, Entry] =>
    asked.ends[id] ?? endsOf(calculator.inputs[id] as Field, Number(given[id]), around);
  const family = isAmong(inputs, asked.family) && asked.family !== along ? asked.family : undefined;
  const kind = result === undefined ? undefined : calculator.results[result]?.kind;
  const alike = results.filter(([id, one]) => id !== result && one.kind === kind).slice(0, MOST_CURVES - 1);
  const beside = family === undefined ? (asked.beside ?? []).filter((id) => isAmong(alike, id)) : [];

  const read = field && along !== undefined ? readSpan(field, endsFor(along), around) : null;
  const familyField = family === undefined ? undefined : (calculator.inputs[family] as Field);
  const readFamily =
    familyField && family !== undefined ? readSpan(familyField, endsFor(family), around) : null;
  const count = asked.members ?? 3;
  const isTooMany = field?.whole && read?.span && read.span[1] - read.span[0] >= MOST_WHOLE;
  const members =
    readFamily?.span && familyField
      ? [...new Set(evenly(...readFamily.span, count).map((x) => (familyField.whole ? Math.round(x) : x)))]
      : undefined;
  const plan: Plan | null =
    result !== undefined &&
    along !== undefined &&
    read?.span &&
    !isTooMany &&
    (family === undefined || members)
      ? {
          along,
          result,
          results: [result, ...beside],
          span: read.span,
          family: family !== undefined && members ? { input: family, values: members } : undefined,
        }
      : null;
  const now = result === undefined ? undefined : standing?.outcome.values[result];
  const key = JSON.stringify([plan, given, around.system, around.barometer.value]);
  useEffect(() => {
    if (!plan) return;
    const timer = setTimeout(() => setDrawn(draw(calculator, given, now, plan, around)), drawn ? REST : 0);
    return () => clearTimeout(timer);
  }, [key]);

  // Without scripts nothing can be asked for, so that the example's curve stands alone.
  if (import.meta.env.SSR) {
    if (!plan) return <p class="msg">Nothing here changes with a number.</p>;
    return <SweepChart drawn={draw(calculator, given, now, plan, around, FEW)} isSmall />;
  }
  if (!field || along === undefined || result === undefined)
    return <p class="msg">With the choices made, there is no number to be varied.</p>;

  const ask = (changes: Partial<Asked>) => setAsked({ ...asked, ...changes });
  const setEnd = (id: string, which: 0 | 1) => (entry: Entry) => {
    const [from, to] = endsFor(id);
    const ends: readonly [Entry, Entry] = which === 0 ? [entry, to] : [from, entry];
    ask({ ends: { ...asked.ends, [id]: ends } });
  };
  const id = (part: string) => `${calculator.id}-sweep-${part}`;
  const spanFields = (of: string, ofField: Field, says: ReturnType<typeof readSpan>["says"]) =>
    ([0, 1] as const).map((which) => (
      <FieldRow
        key={`${of}-${which}`}
        id={id(`${of}-${which === 0 ? "start" : "end"}`)}
        field={{ ...ofField, label: which === 0 ? "begins at" : "ends at" }}
        entry={endsFor(of)[which]}
        isExample={endsFor(of)[which].typed === null}
        messages={says[which]}
        around={around}
        help=""
        onEntry={setEnd(of, which)}
      />
    ));
  const isStale = plan === null || !evaluation.outcome;
  return (
    <>
      <ChoiceRow
        id={id("result")}
        choice={{ label: "Show", options: optionsOf(results), start: "", help: "" }}
        value={result}
        onChoose={(next) => ask({ result: next, beside: [] })}
      />
      <ChoiceRow
        id={id("along")}
        choice={{
          label: "against",
          options: optionsOf(inputs),
          start: "",
          help: field.barometer
            ? "Pressures typed on a gauge stay as they are in absolute terms."
            : field.whole
              ? "It is counted, so that only whole numbers stand on the curve."
              : "",
        }}
        value={along}
        onChoose={(next) => ask({ along: next })}
      />
      {read && spanFields(along, field, read.says)}
      {isTooMany && (
        <p class="msg">
          <b>Too many whole numbers.</b> At most {MOST_WHOLE} can be swept.
        </p>
      )}
      {alike.length > 0 && family === undefined && (
        <fieldset class="beside">
          <legend>In the same chart</legend>
          {alike.map(([one, { label }]) => (
            <label key={one}>
              <input
                type="checkbox"
                checked={beside.includes(one)}
                onChange={(event) =>
                  ask({
                    beside: event.currentTarget.checked
                      ? [...beside, one]
                      : beside.filter((other) => other !== one),
                  })
                }
              />
              {label}
            </label>
          ))}
        </fieldset>
      )}
      <ChoiceRow
        id={id("family")}
        choice={{
          label: "A curve for each of several values of",
          options: { [NONE]: "nothing", ...optionsOf(inputs.filter(([one]) => one !== along)) },
          start: NONE,
          help: "",
        }}
        value={family ?? NONE}
        onChoose={(next) => ask({ family: next })}
      />
      {family !== undefined && familyField && readFamily && (
        <>
          {spanFields(family, familyField, readFamily.says)}
          <ChoiceRow
            id={id("members")}
            choice={{
              label: "Number of curves",
              options: { "2": "2", "3": "3", "4": "4", "5": "5" },
              start: "3",
              help: "",
            }}
            value={String(count)}
            onChoose={(next) => ask({ members: Number(next) })}
          />
        </>
      )}
      {drawn && (
        <>
          <SweepChart drawn={drawn} isStale={isStale} />
          <details class="folded">
            <summary>The same as a table</summary>
            <SweepTable drawn={drawn} />
          </details>
          <div class="tools">
            <button
              type="button"
              class="btn quiet"
              onClick={() =>
                save(fileName(`${calculator.id}-${drawn.along}`, "csv"), "text/csv", mark + sweepCsv(drawn))
              }
            >
              Save these numbers as CSV
            </button>
          </div>
        </>
      )}
    </>
  );
}
