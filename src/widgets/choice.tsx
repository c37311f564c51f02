import { useEffect, useState } from "preact/hooks";
import type { Choice } from "../calculators/engine/calculator.ts";
import { fetchHoses, hoses } from "./drawing.ts";

interface Props {
  id: string;
  choice: Choice;
  value: string;
  /** The arrangement whose hoses are drawn under it. */
  arrangement?: string | undefined;
  onChoose: (option: string) => void;
}

/** What has labels, by id, as the options of a list. */
export const optionsOf = (rows: readonly (readonly [id: string, named: { readonly label: string }])[]) =>
  Object.fromEntries(rows.map(([id, { label }]) => [id, label]));

/** A choice between named ways: one line that opens, so that a long calculator stays short on a phone. */
export function ChoiceRow({ id, choice, value, arrangement, onChoose }: Props) {
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
        <p class="msg help" id={`${id}-msg`}>
          {choice.help}
        </p>
      )}
      {arrangement !== undefined && <Chosen arrangement={arrangement} />}
    </div>
  );
}

/** The hoses of what is chosen. Until their drawer is fetched, those that the build drew stay as they are. */
function Chosen({ arrangement }: { arrangement: string }) {
  const [, setFetched] = useState(false);
  useEffect(() => {
    if (!hoses.drawer) fetchHoses().then(() => setFetched(true));
  }, []);
  if (!hoses.drawer) return <div class="chosen" dangerouslySetInnerHTML={{ __html: "" }} />;
  return (
    <div class="chosen">
      <hoses.drawer arrangement={arrangement} />
    </div>
  );
}
