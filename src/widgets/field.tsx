import { useRef, useState } from "preact/hooks";
import { kinds } from "../../calc/quantity/kinds.ts";
import { fromSI, unitOf } from "../../calc/quantity/units.ts";
import type { Field } from "../calculators/engine/calculator.ts";
import { barometerContext, type Entry, entryText, type Surroundings } from "../calculators/engine/entry.ts";
import type { Message } from "../calculators/engine/evaluate.ts";
import { textWidth } from "./pictures/text.ts";
import { Sym } from "./symbol.tsx";
import { fetchTouchParts, useTouchParts } from "./touch.ts";
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

const takesNegative = (field: Field, entry: Entry, around: Surroundings): boolean =>
  fromSI(field.limits[0], entry.shown, barometerContext(around)) < 0;

const arrows: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1 };

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
  const touch = useTouchParts();
  const [isInUse, setInUse] = useState(false);
  const [hasLetters, setLetters] = useState(false);
  const canBeNegative = takesNegative(field, entry, around);
  // Steps may come faster than they are drawn.
  const now = useRef({ entry, around, onEntry });
  now.current = { entry, around, onEntry };
  const type = (typed: string) => {
    now.current.entry = { ...now.current.entry, typed, unit: now.current.entry.shown };
    now.current.onEntry(now.current.entry);
  };
  const stepBy = async (steps: number) => {
    const { stepped } = await import("../calculators/engine/step.ts");
    const text = stepped(field, now.current.entry, now.current.around, steps);
    if (text !== null) type(text);
  };
  const hasText = messages.length > 0 || help !== "";
  const text = entryText(field, entry, around);
  const shownUnit = unitLabel(entry.shown);
  const look = [
    "field",
    isExample && "is-example",
    textWidth(shownUnit, 16) > widestBeside && "stacked",
    hasLetters && "wide",
    tone,
  ].filter(Boolean);
  return (
    <div
      class={look.join(" ")}
      onFocusIn={() => {
        setInUse(true);
        fetchTouchParts();
      }}
      onFocusOut={({ currentTarget, relatedTarget }) =>
        setInUse(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))
      }
    >
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
          // A decimal keypad of a phone has no minus: there is one among the keys.
          inputMode={hasLetters || (canBeNegative && isInUse && !touch) ? "text" : "decimal"}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          maxLength={200}
          value={text}
          aria-invalid={tone === "is-invalid"}
          aria-describedby={
            [isExample && `${id}-eg`, hasText && `${id}-msg`].filter(Boolean).join(" ") || undefined
          }
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={(event) => {
            const way = arrows[event.key];
            if (way === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
            event.preventDefault();
            stepBy(event.shiftKey ? 10 * way : way);
          }}
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
      {touch && isInUse && (
        <touch.FieldKeys
          {...{ field, entry, around, canBeNegative, hasLetters }}
          onLetters={setLetters}
          onType={type}
        />
      )}
      {hasText && (
        <div class="msg" id={`${id}-msg`}>
          {messages.map((message) => (
            <p key={message.says}>
              <Says message={message} />
            </p>
          ))}
          {tone !== "is-invalid" && help !== "" && <p class="help">{help}</p>}
        </div>
      )}
    </div>
  );
}
