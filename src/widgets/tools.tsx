import { useState } from "preact/hooks";
import { kinds } from "../../calc/quantity/kinds.ts";
import { writeIn, writeQuantity } from "../../calc/quantity/write.ts";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import { barometerContext, type Entries, entryText, type Surroundings } from "../calculators/engine/entry.ts";
import type { Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { unitLabel } from "./field.tsx";
import { pageLink } from "./page-link.ts";

interface Props {
  calculator: Calculator;
  entries: Entries;
  outcome: Success | null;
  around: Surroundings;
  onReset: () => void;
}

/** Inputs, results, barometer and link as lines of text. */
function numbersAsText({ calculator, entries, outcome, around }: Props): string {
  const context = barometerContext(around);
  const lines = [calculator.title];
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (!isShown(calculator, input.when, entries.choices)) continue;
    if (isChoice(input)) {
      lines.push(`${input.label}: ${input.options[entries.choices[id] ?? ""] ?? ""}`);
      continue;
    }
    const entry = entries.fields[id];
    if (!entry) continue;
    const text = input.barometer && entry.typed === null ? null : entryText(input, entry, around);
    const number = text ?? writeIn(around.barometer.value, entry.shown, context);
    const isExample = entry.typed === null && (!input.barometer || around.barometer.isExample);
    lines.push(
      `${input.label}: ${number} ${unitLabel(entry.shown)}${isExample ? " (example value)" : ""}`.trimEnd(),
    );
  }
  lines.push("");
  for (const [id, result] of Object.entries(calculator.results)) {
    if (!outcome || result.inPicture || !isShown(calculator, result.when, entries.choices)) continue;
    const value = outcome.values[id] ?? Number.NaN;
    lines.push(`${result.label}: ${writeQuantity(value, kinds[result.kind][around.system], context)}`);
  }
  const unit = kinds.pressure[around.system];
  const barometer = writeQuantity(around.barometer.value, unit, context);
  lines.push(
    "",
    `Barometer: ${barometer}${around.barometer.isExample ? " (example value)" : ""}`,
    pageLink(),
  );
  return lines.join("\n");
}

/** What can be done with a calculator as a whole. Needs JavaScript, so it is not in the page without it. */
export function Tools(props: Props) {
  const [copied, setCopied] = useState<{ what: string; text: string; isDone: boolean } | null>(null);
  const copy = async (what: string, text: string) => {
    try {
      await navigator.clipboard.writeText(text);
      setCopied({ what, text, isDone: true });
    } catch {
      // A page without leave to the clipboard shows the text to be copied by hand.
      setCopied({ what, text, isDone: false });
    }
  };
  return (
    <div class="tools needs-js">
      <button type="button" class="btn" onClick={() => copy("Link", pageLink())}>
        Copy link
      </button>
      <button
        type="button"
        class="btn quiet"
        disabled={!props.outcome}
        onClick={() => copy("Numbers", numbersAsText(props))}
      >
        Copy numbers
      </button>
      <button type="button" class="btn quiet" onClick={() => print()}>
        Print
      </button>
      <button type="button" class="btn quiet" onClick={props.onReset}>
        Back to the example
      </button>
      <p class="msg" role="status">
        {copied?.isDone && `${copied.what} copied.`}
      </p>
      {copied && !copied.isDone && (
        <label class="copy-by-hand">
          {copied.what}, to be copied by hand
          <textarea readOnly rows={4} value={copied.text} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </div>
  );
}
