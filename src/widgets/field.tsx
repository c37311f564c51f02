import { kinds } from "../../calc/quantity/kinds.ts";
import { unitOf } from "../../calc/quantity/units.ts";
import type { Field } from "../calculators/engine/calculator.ts";
import { type Entry, entryText, type Surroundings } from "../calculators/engine/entry.ts";
import type { Message } from "../calculators/engine/evaluate.ts";
import { textWidth } from "./pictures/text.ts";
import { Sym } from "./symbol.tsx";
import { unitLabel } from "./unit-label.ts";

interface Props {
  id: string;
  field: Field;
  entry: Entry;
  isExample: boolean;
  messages: readonly Message[];
  around: Surroundings;
  /** What the field is for; the message of a value that cannot be used takes its place. */
  help?: string;
  onEntry: (entry: Entry) => void;
}

/** An opening bold part for the first words of a message that warns. */
function Says({ message }: { message: Message }) {
  if (message.tone === "plain") return <>{message.says}</>;
  const end = message.says.search(/(?<=[.:]) /);
  if (end < 0) return <b>{message.says}</b>;
  return (
    <>
      <b>{message.says.slice(0, end)}</b>
      {message.says.slice(end)}
    </>
  );
}

const signed = new Set(["temperature", "temperatureDifference", "altitude", "gaugePressure"]);
/** A decimal keypad of a phone has no minus. */
const canBeNegative = (field: Field, entry: Entry): boolean =>
  signed.has(field.kind) || unitOf(entry.shown).gauge === true;

/** More characters than this are set smaller, so that none is cut on a phone. */
const mostAtFullSize = 6;
/** A unit longer than this, in pixels at 16 to the em, has no room beside a label. */
const widestBeside = 58;

/** One quantity that the visitor gives: label and symbol, number, unit, and what there is to say about it. */
export function FieldRow({
  id,
  field,
  entry,
  isExample,
  messages,
  around,
  help = field.help,
  onEntry,
}: Props) {
  const offered = (kinds[field.kind].units as readonly string[]).filter(
    // The barometer is what gauges count from.
    (unit) => !(field.barometer && unitOf(unit).gauge),
  );
  const tone = messages.some((m) => m.tone === "invalid")
    ? "is-invalid"
    : messages.some((m) => m.tone === "outside")
      ? "is-outside"
      : "";
  const hasText = messages.length > 0 || help !== "";
  const text = entryText(field, entry, around);
  const shownUnit = unitLabel(entry.shown);
  const look = [
    "field",
    isExample && "is-example",
    textWidth(shownUnit, 16) > widestBeside && "stacked",
    tone,
  ].filter(Boolean);
  return (
    <div class={look.join(" ")}>
      <label for={id}>
        {field.label} <Sym of={field.symbol} />
      </label>
      <div class="entry">
        {isExample && (
          <span class="eg">
            <span aria-hidden="true">e.g.</span>
            <span class="hidden" id={`${id}-eg`}>
              Example value.
            </span>
          </span>
        )}
        <input
          id={id}
          class={text.length > mostAtFullSize ? "long" : undefined}
          type="text"
          inputMode={canBeNegative(field, entry) ? "text" : "decimal"}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          maxLength={200}
          value={text}
          aria-invalid={tone === "is-invalid"}
          aria-describedby={
            [isExample && `${id}-eg`, hasText && `${id}-msg`].filter(Boolean).join(" ") || undefined
          }
          onInput={(event) => onEntry({ ...entry, typed: event.currentTarget.value, unit: entry.shown })}
        />
        {offered.length > 1 ? (
          <select
            class="unit"
            aria-label={`Unit of ${field.label.toLowerCase()}`}
            value={entry.shown}
            onChange={(event) => onEntry({ ...entry, shown: event.currentTarget.value })}
          >
            {offered.map((unit) => (
              <option key={unit} value={unit}>
                {unitLabel(unit) || "(0 to 1)"}
              </option>
            ))}
          </select>
        ) : (
          shownUnit !== "" && <span class="unit none">{shownUnit}</span>
        )}
      </div>
      {hasText && (
        <div class="msg" id={`${id}-msg`}>
          {messages.map((message) => (
            <p key={message.says}>
              <Says message={message} />
            </p>
          ))}
          {tone !== "is-invalid" && help !== "" && <p>{help}</p>}
        </div>
      )}
    </div>
  );
}
