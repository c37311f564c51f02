import { type Calculator, type Field, isChoice } from "../../calculators/engine/calculator.ts";
import type { Entry } from "../../calculators/engine/entry.ts";
import { isShown } from "../../calculators/engine/shown.ts";
import { behindOf, withBehind } from "../../calculators/engine/within-text.ts";
import { Sym } from "../symbol.tsx";
import type { Running } from "../use-calculator.ts";
import { differenceLabel } from "./written.ts";

/** A field for what stands behind ± of each number in sight. It is written into the field of the number itself, which keeps it. */
export function BehindRows({ calculator, running }: { calculator: Calculator; running: Running }) {
  const { entries, evaluation, around, barometer } = running;
  const rows = Object.entries(calculator.inputs).flatMap(([id, input]) => {
    const own = entries.fields[id];
    const isNumber = own && !isChoice(input) && !input.whole;
    if (!isNumber || !isShown(calculator, input.when, entries.choices)) return [];
    // A barometer that nobody typed here is that of the page.
    return [[id, input, input.barometer && own.typed === null ? barometer : own] as const];
  });
  return (
    <details class="folded">
      <summary>Give each ± here</summary>
      <p class="msg">
        What is typed here is written behind ± in the field itself. Per cent of the number may be typed too,
        but not of temperatures and fractions.
      </p>
      {rows.map(([id, field, entry]) => (
        <Behind
          key={id}
          id={`${calculator.id}-pm-${id}`}
          field={field}
          entry={entry}
          behind={behindOf(field, entry, around)}
          says={
            (evaluation.messages[id] ?? []).find(
              ({ tone, says }) => tone === "invalid" || (says.includes("±") && tone === "outside"),
            )?.says
          }
          onType={(text) => running.setField(id, withBehind(field, entry, around, text))}
        />
      ))}
    </details>
  );
}

interface BehindProps {
  id: string;
  field: Field;
  entry: Entry;
  behind: string;
  says: string | undefined;
  onType: (text: string) => void;
}

function Behind({ id, field, entry, behind, says, onType }: BehindProps) {
  const unit = differenceLabel(entry.shown);
  return (
    <div class={`field${says && behind !== "" ? " is-invalid" : ""}`}>
      <label for={id}>
        ± of {field.label.replace(/^\p{Lu}(?=\p{Ll})/u, (letter) => letter.toLowerCase())}{" "}
        <Sym of={field.symbol} />
      </label>
      <div class="entry">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          maxLength={60}
          value={behind}
          aria-invalid={says !== undefined && behind !== ""}
          aria-describedby={says && behind !== "" ? `${id}-msg` : undefined}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        {unit !== "" && <span class="unit none">{unit}</span>}
      </div>
      {says && behind !== "" && (
        <p class="msg" id={`${id}-msg`}>
          {says}
        </p>
      )}
    </div>
  );
}
