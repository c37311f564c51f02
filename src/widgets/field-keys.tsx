import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { Field } from "../calculators/engine/calculator.ts";
import { type Entry, entryText, type Surroundings } from "../calculators/engine/entry.ts";
import { stepped } from "../calculators/engine/step.ts";

interface Props {
  field: Field;
  entry: Entry;
  around: Surroundings;
  canBeNegative: boolean;
  /** The keyboard has letters, for units and calculations. */
  hasLetters: boolean;
  onLetters: (hasLetters: boolean) => void;
  onType: (text: string) => void;
}

/** Milliseconds until a key that is held repeats, and from one time to the next. */
const waits = 450;
const repeats = 110;
/** Milliseconds after a finger is lifted in which a click is still its own. */
const lifts = 700;

/** A key that leaves the focus, and with it the keyboard, where it is. Its press counts when the finger comes down. */
function Key(props: {
  says: string;
  /** Null where the key can do nothing. */
  onPress: (() => void) | null;
  isHeld?: boolean;
  isPressed?: boolean;
  children: ComponentChildren;
}) {
  const { says, isHeld = false, isPressed, children } = props;
  const press = useRef(props.onPress);
  press.current = props.onPress;
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const touched = useRef(Number.NEGATIVE_INFINITY);
  const stop = () => {
    clearTimeout(timer.current);
    touched.current = performance.now();
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  const again = () => {
    press.current?.();
    timer.current = setTimeout(again, repeats);
  };
  const down = () => {
    press.current?.();
    clearTimeout(timer.current);
    if (isHeld) timer.current = setTimeout(again, waits);
  };
  return (
    <button
      type="button"
      class="btn"
      tabIndex={-1}
      aria-label={says}
      // A button that is disabled would let the touch through, and the keyboard would close.
      aria-disabled={props.onPress === null}
      aria-pressed={isPressed}
      onPointerDown={down}
      onPointerUp={stop}
      onPointerCancel={stop}
      onPointerLeave={stop}
      // A screen reader clicks without a finger on the key.
      onClick={() => performance.now() - touched.current > lifts && press.current?.()}
    >
      {children}
    </button>
  );
}

const withSignChanged = (text: string): string => {
  const rest = text.replace(/^\s*[-−–]\s*/u, "");
  return rest === text ? `-${text}` : rest;
};

const keepFocus = (event: Event) => event.preventDefault();

/** What the decimal keypad of a phone lacks: the sign, steps up and down, and the way to letters. */
export function FieldKeys(props: Props) {
  const { field, entry, around, canBeNegative, hasLetters, onLetters, onType } = props;
  const step = (steps: number) => {
    const text = stepped(field, entry, around, steps);
    return text === null ? null : () => onType(text);
  };
  return (
    <fieldset
      class="keys"
      aria-label={`Keys for ${field.label.toLowerCase()}`}
      onPointerDown={keepFocus}
      onMouseDown={keepFocus}
      onContextMenu={keepFocus}
    >
      <Key says="Calculate" isPressed={hasLetters} onPress={() => onLetters(!hasLetters)}>
        Calculate
      </Key>
      {canBeNegative && (
        <Key says="Change the sign" onPress={() => onType(withSignChanged(entryText(field, entry, around)))}>
          ±
        </Key>
      )}
      <Key says="A step down" isHeld onPress={step(-1)}>
        −
      </Key>
      <Key says="A step up" isHeld onPress={step(1)}>
        +
      </Key>
    </fieldset>
  );
}
