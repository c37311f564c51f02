import { ChoiceRow } from "./choice.tsx";

type Props = Parameters<typeof ChoiceRow>[0];

/** A choice between two, as one touch; between more, as a list that opens. */
export function Switch(props: Props) {
  const { id, choice, value, onChoose } = props;
  const options = Object.entries(choice.options);
  if (options.length !== 2) return <ChoiceRow {...props} />;
  return (
    <div class="field switch" role="radiogroup" aria-labelledby={`${id}-label`}>
      <span id={`${id}-label`}>{choice.label}</span>
      <div class="entry">
        {options.map(([option, label]) => (
          <label key={option}>
            <input
              type="radio"
              id={`${id}-${option}`}
              name={id}
              value={option}
              checked={option === value}
              onChange={() => onChoose(option)}
            />
            {label}
          </label>
        ))}
      </div>
    </div>
  );
}
