import { kinds } from "../../calc/quantity/kinds.ts";
import { writeIn } from "../../calc/quantity/write.ts";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import type { Success } from "../calculators/engine/evaluate.ts";
import { Sym } from "./symbol.tsx";
import { unitLabel } from "./unit-label.ts";

interface Props {
  calculator: Calculator;
  id: string;
  unit: string;
  outcome: Success;
  isStale: boolean;
  isExample: boolean;
  around: Surroundings;
  isAnswer?: boolean;
  /** Offers the other units. */
  onUnit?: (unit: string) => void;
}

/** One result on one line, for a strip above the keyboard: what there is to say about it stands elsewhere. */
export function ResultRow(props: Props) {
  const { calculator, id, unit, outcome, isStale, isExample, around, isAnswer = false, onUnit } = props;
  const result = calculator.results[id];
  if (!result) return null;
  const { label, symbol, kind } = result;
  const value = outcome.values[id];
  const number = value === undefined ? "—" : writeIn(value, unit, barometerContext(around));
  const isOutside = outcome.notes.some((note) => note.about === id);
  const look = [isAnswer && "answer", isStale && "is-stale", isOutside && "is-outside"];
  const offered: readonly string[] = kinds[kind].units;
  return (
    <div class={look.filter(Boolean).join(" ")}>
      <dt>
        {label} <Sym of={symbol} />
      </dt>
      <dd>
        {isExample && <span class="eg">e.g.</span>}
        <output aria-live="off" data-result={id}>
          {isStale ? `[${number}]` : number}
        </output>
        {onUnit && offered.length > 1 ? (
          <select
            class="u"
            aria-label={`Unit of ${label.toLowerCase()}`}
            value={unit}
            onChange={(event) => onUnit(event.currentTarget.value)}
          >
            {offered.map((one) => (
              <option key={one} value={one}>
                {unitLabel(one) || "(0 to 1)"}
              </option>
            ))}
          </select>
        ) : (
          <span class="u">{value === undefined ? "" : unitLabel(unit)}</span>
        )}
      </dd>
    </div>
  );
}
