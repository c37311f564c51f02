import type { Choice } from "../calculators/engine/calculator.ts";

interface Props {
  id: string;
  choice: Choice;
  value: string;
  onChoose: (option: string) => void;
}

/** A choice between a few named ways. */
export function ChoiceRow({ id, choice, value, onChoose }: Props) {
  if (choice.isList) {
    return (
      <div class="field">
        <label for={id}>{choice.label}</label>
        <select id={id} class="list" value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
          {Object.entries(choice.options).map(([option, label]) => (
            <option key={option} value={option}>
              {label}
            </option>
          ))}
        </select>
      </div>
    );
  }
  return (
    <fieldset class="choice">
      <legend>{choice.label}</legend>
      {Object.entries(choice.options).map(([option, label]) => (
        <label key={option}>
          <input
            type="radio"
            name={id}
            value={option}
            checked={option === value}
            onChange={() => onChoose(option)}
          />
          {label}
        </label>
      ))}
      {choice.help !== "" && <p class="msg">{choice.help}</p>}
    </fieldset>
  );
}
