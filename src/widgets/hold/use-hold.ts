import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import type { Entries, Entry } from "../../calculators/engine/entry.ts";
import { change } from "../settings.ts";
import type { Running } from "../use-calculator.ts";

/** A state that is kept to be compared with. */
export interface Held {
  readonly entries: Entries;
  readonly barometer: Entry;
  readonly fromElevation: boolean;
}

type Code = typeof import("./compare.tsx");

/** What is held of a calculator, how that changes, and the code that compares, which loads on use. */
export function useHold(calculator: Calculator, running: Running) {
  const [held, setHeld] = useState<Held | null>(null);
  const [code, setCode] = useState<Code | null>(null);
  useLayoutEffect(() => {
    // What was held stands in the history beside the draft, so that a reload loses nothing.
    const kept: unknown = history.state?.held?.[calculator.id];
    if (typeof kept !== "string") return;
    import("./kept.ts").then(({ readKept }) => setHeld((now) => now ?? readKept(calculator, kept)));
  }, [calculator]);
  useEffect(() => {
    if (held && !code) import("./compare.tsx").then((found) => setCode(() => found));
  }, [held, code]);

  const put = async (next: Held | null) => {
    setHeld(next);
    (await import("./kept.ts")).keep(calculator, next, running.around.system);
  };
  const present = (): Held => {
    const { entries, barometer, fromElevation } = running;
    return { entries, barometer, fromElevation };
  };
  const swap = () => {
    if (!held) return;
    put(present());
    running.set(held.entries);
    const { barometer, fromElevation } = held;
    change({ barometer, fromElevation });
  };
  return {
    isHeld: held !== null,
    toggle: () => put(held ? null : present()),
    swap,
    compared: held && code?.compare(calculator, held, running),
  };
}
