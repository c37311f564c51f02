import { useEffect, useRef, useState } from "preact/hooks";
import type { SI } from "../../calc/quantity/domain-error.ts";
import { isUnitOf } from "../../calc/quantity/kinds.ts";
import type { Calculator, Field } from "../calculators/engine/calculator.ts";
import {
  type Entries,
  type Entry,
  readEntry,
  type Surroundings,
  type Want,
} from "../calculators/engine/entry.ts";
import { evaluate, type Message, tryModel } from "../calculators/engine/evaluate.ts";
import { firstThatMatters } from "../calculators/engine/matters.ts";
import { freeInputs, listedResults } from "../calculators/engine/shown.ts";
import { solve } from "../calculators/engine/solve.ts";
import { entryOfWant, fieldOfResult, isAsWanted, readWanted } from "../calculators/engine/want.ts";
import { ChoiceRow, optionsOf } from "./choice.tsx";
import { FieldRow } from "./field.tsx";
import type { PanelProps } from "./later-fold.tsx";
import { type Offer, type Told, tell, typedText, unitOfWanted } from "./solved-text.ts";
import { Rested } from "./spoken.tsx";
import { unitLabel } from "./unit-label.ts";

/** Milliseconds that typing rests before it is answered. */
const REST = 120;

interface Answer extends Told {
  readonly of: Want;
  /** What a held field has to hold, where that is not what it holds. */
  readonly held?: string;
}

/** The field that is to be found, as if nothing were wrong in it. */
function withoutSought(entries: Entries, input: string): Entries {
  const entry = entries.fields[input];
  return entry ? { ...entries, fields: { ...entries.fields, [input]: { ...entry, typed: null } } } : entries;
}

/** The value that does and is nearest to the present one: null where that one does. */
function nearestTo(present: SI, roots: readonly SI[], stretches: readonly { from: SI; to: SI }[]): SI | null {
  if (stretches.some(({ from, to }) => present >= from && present <= to)) return null;
  const all = [...roots, ...stretches.flatMap(({ from, to }) => [from, to])];
  return all.reduce((best, x) => (Math.abs(x - present) < Math.abs(best - present) ? x : best));
}

/** What answers a wanted result; null where what is wanted cannot be read, which its field says. */
function answerTo(calculator: Calculator, entries: Entries, around: Surroundings, want: Want): Answer | null {
  const wanted = readWanted(calculator, want, around);
  const entry = entries.fields[want.input];
  const result = calculator.results[want.result];
  if (!wanted.ok || !entry || !result) return null;
  const { given, isRead } = evaluate(calculator, withoutSought(entries, want.input), around);
  if (!isRead) {
    const says = "Another field cannot be used as it stands. Once it can, this is answered.";
    return { of: want, says, offers: [], looked: "" };
  }
  const reading = readEntry(calculator.inputs[want.input] as Field, entry, around);
  const present = reading.ok ? reading.value : entry.example;
  const question = {
    calculator,
    given: { ...given, [want.input]: present },
    result: want.result,
    input: want.input,
    target: wanted.value,
  };
  const asked = { question, inputUnit: entry.shown, resultUnit: want.shown, around };
  const solved = solve(question);
  const told: Answer = { of: want, ...tell(asked, solved) };
  if (!want.isHeld || solved.kind !== "found") return told;
  const value = tryModel(calculator, question.given, {})?.[want.result];
  if (reading.ok && isAsWanted(value, wanted.value)) return told;
  const root = nearestTo(present, solved.roots, solved.stretches);
  return root === null ? told : { ...told, held: typedText(asked, root) };
}

/** The answer once typing rests, computed while the page has nothing else to do; null until there is one. */
function useAnswer({ calculator, running }: PanelProps, want: Want | undefined): Answer | null {
  const { entries, around } = running;
  const [answer, setAnswer] = useState<Answer | null>(null);
  const write = useRef(running.write);
  write.current = running.write;
  useEffect(() => {
    if (!want) {
      setAnswer(null);
      return;
    }
    const work = () => {
      const next = answerTo(calculator, entries, around, want);
      setAnswer(next);
      if (next?.held !== undefined && next.held !== entries.fields[want.input]?.typed)
        write.current(want.input, next.held);
    };
    let idle: number | undefined;
    const timer = setTimeout(() => {
      // Not every browser tells when it is idle.
      if ("requestIdleCallback" in globalThis) idle = requestIdleCallback(work, { timeout: 500 });
      else work();
    }, REST);
    return () => {
      clearTimeout(timer);
      if (idle !== undefined) cancelIdleCallback(idle);
    };
  }, [calculator, entries, around, want]);
  return answer;
}

/** Whether the same is asked: holding it or not makes no other question. */
const isSame = (a: Want, b: Want | undefined): boolean =>
  (["result", "input", "typed", "unit", "shown"] as const).every((key) => a[key] === b?.[key]);

/** A calculator asked backwards: what is wanted, which field is to be found for it, and what does. */
export default function SolvePanel(props: PanelProps) {
  const { calculator, running } = props;
  const { entries, evaluation, around, standing } = running;
  const results = listedResults(calculator, entries.choices);
  const inputs = freeInputs(calculator, entries.choices);
  // What is chosen before anything is wanted.
  const [first, setFirst] = useState<{ readonly result?: string; readonly input?: string }>({});
  const [used, setUsed] = useState("");
  const { want } = entries;
  const isIn = (rows: readonly (readonly [string, unknown])[], id: string | undefined) =>
    rows.some(([one]) => one === id);
  const resultId = [want?.result, first.result].find((id) => isIn(results, id)) ?? results[0]?.[0];
  const inputId =
    [want?.input, first.input].find((id) => isIn(inputs, id)) ??
    (resultId &&
      firstThatMatters(calculator, evaluation.given, resultId, evaluation.outcome?.values[resultId]));
  const answer = useAnswer(props, want);
  const result = resultId === undefined ? undefined : calculator.results[resultId];
  if (resultId === undefined || !inputId || !result)
    return <p class="msg">With the choices made, there is nothing to be found.</p>;

  const change = (changes: Partial<Want>) => {
    setUsed("");
    if (!want && changes.typed === undefined) {
      setFirst({ result: resultId, input: inputId, ...changes });
      return;
    }
    const unit = unitOfWanted(result, around);
    const next = {
      result: resultId,
      input: inputId,
      typed: "",
      unit,
      shown: unit,
      isHeld: false,
      ...want,
      ...changes,
    };
    running.set({ ...entries, want: fitting(calculator, next, around) });
  };
  const onEntry = ({ typed, unit, shown }: Entry) =>
    typed === null ? change({ typed: "", unit: shown, shown }) : change({ typed, unit, shown });
  const use = ({ typed }: Offer) => {
    running.write(inputId, typed);
    const unit = unitLabel(entries.fields[inputId]?.shown ?? "");
    setUsed(`${typed} ${unit}`.trim());
  };

  const isAnswerable = want && want.result === resultId && want.input === inputId;
  const reading = isAnswerable ? readWanted(calculator, want, around) : null;
  const unit = unitOfWanted(result, around);
  const example = standing?.outcome.values[resultId];
  const own: Entry =
    want && isAnswerable
      ? entryOfWant(want)
      : { typed: example === undefined ? "" : null, example: example ?? 0, unit, shown: unit };
  const messages: Message[] = [];
  if (reading && !reading.ok && want?.typed !== "") messages.push({ tone: "invalid", says: reading.says });
  if (reading?.ok && reading.understood !== undefined)
    messages.push({ tone: "plain", says: reading.understood });
  const isTold = answer !== null && isSame(answer.of, want) && reading?.ok;
  const says = isTold ? answer.says : "";

  return (
    <>
      {want && !isAnswerable && (
        <p class="msg">
          With the choices made, what was wanted or what was to be found is not shown. What was typed is kept.
        </p>
      )}
      <ChoiceRow
        id={`${calculator.id}-want-result`}
        choice={{ label: "I want another", options: optionsOf(results), start: "", help: "" }}
        value={resultId}
        onChoose={(id) => change({ result: id })}
      />
      <FieldRow
        key={resultId}
        id={`${calculator.id}-want`}
        field={fieldOfResult(result)}
        entry={own}
        isExample={own.typed === null}
        messages={messages}
        around={around}
        help={isAnswerable ? "" : "The present result. Type what it is to be."}
        onEntry={onEntry}
      />
      <ChoiceRow
        id={`${calculator.id}-want-input`}
        choice={{ label: "Find for it", options: optionsOf(inputs), start: "", help: "" }}
        value={inputId}
        onChoose={(id) => change({ input: id })}
      />
      <div class="tools">
        {isTold && <p class="solved">{answer.says}</p>}
        {isTold &&
          answer.offers.map((offer, i) => (
            <button type="button" class="btn" key={i} onClick={() => use(offer)}>
              Use {offer.shown}
            </button>
          ))}
        {isAnswerable && (
          <button
            type="button"
            class="btn quiet"
            id={`${calculator.id}-want-held`}
            onClick={() => change({ isHeld: !want.isHeld })}
          >
            {want.isHeld ? "Stop keeping it so" : "Keep it so when other fields change"}
          </button>
        )}
      </div>
      {isTold && answer.looked !== "" && <p class="msg">{answer.looked}</p>}
      <p class="msg" role="status">
        {used !== "" && `${used} is written into “${calculator.inputs[inputId]?.label}”.`}
      </p>
      <Rested says={says} />
    </>
  );
}

/** A want whose unit fits its result: after another result was chosen, that result's own. */
function fitting(calculator: Calculator, want: Want, around: Surroundings): Want {
  const result = calculator.results[want.result];
  if (!result || isUnitOf(result.kind, want.unit)) return want;
  const unit = unitOfWanted(result, around);
  return { ...want, unit, shown: unit };
}
