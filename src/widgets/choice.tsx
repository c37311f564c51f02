import type { Choice } from "../calculators/engine/calculator.ts";

interface Props {
  id: string;
  choice: Choice;
  value: string;
  onChoose: (option: string) => void;
}

/** A choice between named ways: one line that opens, so that a long calculator stays short on a phone. */
export function ChoiceRow({ id, choice, value, onChoose }: Props) {
  return (
    <div class="field pick">
      <label for={id}>{choice.label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={choice.help === "" ? undefined : `${id}-msg`}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {Object.entries(choice.options).map(([option, label]) => (
          <option key={option} value={option}>
            {label}
          </option>
        ))}
      </select>
      {choice.help !== "" && (
        <p class="msg" id={`${id}-msg`}>
          {choice.help}
        </p>
      )}
    </div>
  );
}
