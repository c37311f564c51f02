import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { UnitSystem } from "../../calc/quantity/kinds.ts";
import { readBarometer } from "../calculators/engine/barometer.ts";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import { type Entries, type Entry, inSystem, startEntries } from "../calculators/engine/entry.ts";
import { type Evaluation, evaluate, type Success } from "../calculators/engine/evaluate.ts";
import { releasedBy } from "../calculators/engine/release.ts";
import { withStatedAir } from "../calculators/engine/stated-air.ts";
import { change, surroundings as known, restore } from "./settings.ts";
import { useSettings, useSurroundings } from "./use-surroundings.ts";

/** The last state that had an outcome: it stays on the page, marked, while something typed cannot be used. */
interface Good {
  readonly evaluation: Evaluation;
  readonly outcome: Success;
  readonly entries: Entries;
}

/** What stands in a calculator, what follows from it, and how it changes: by hand, by a link, by the settings of the page. */
export function useCalculator(calculator: Calculator) {
  const surroundings = useSurroundings();
  const around = useMemo(() => withStatedAir(surroundings), [surroundings]);
  const { barometer, fromElevation } = useSettings();
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
      systemOf.current = known.get().system;
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

  const set = (next: Entries) => {
    isTouched.current = true;
    setEntries(next);
  };
  const choose = (choices: Entries["choices"]) => set({ ...entries, choices });
  const setField = (id: string, entry: Entry) => {
    const field = calculator.inputs[id];
    if (field && !isChoice(field) && field.barometer) {
      if (entry.typed !== null && readBarometer(entry).ok) change({ barometer: entry, fromElevation: false });
    }
    const want = entries.want && releasedBy(entries.want, id, entries.fields[id], entry);
    set({ ...entries, want, fields: { ...entries.fields, [id]: entry } });
  };
  /** Writes into a field what was found for it: a hold goes on. */
  const write = (id: string, typed: string) => {
    const entry = entries.fields[id];
    if (entry)
      set({ ...entries, fields: { ...entries.fields, [id]: { ...entry, typed, unit: entry.shown } } });
  };
  const reset = () => {
    setUnread([]);
    set(startEntries(calculator, around.system));
  };

  return {
    around,
    barometer,
    fromElevation,
    entries,
    evaluation,
    standing,
    isStale,
    unread,
    set,
    choose,
    setField,
    write,
    reset,
  };
}

export type Running = ReturnType<typeof useCalculator>;

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
