import { useEffect, useState } from "preact/hooks";
import { writeQuantity } from "../../calc/quantity/write.ts";
import type { Calculator } from "../calculators/engine/calculator.ts";
import {
  barometerContext,
  type Entries,
  type Surroundings,
  unitOfResult,
} from "../calculators/engine/entry.ts";
import type { Evaluation } from "../calculators/engine/evaluate.ts";
import { answerOf } from "../calculators/engine/shown.ts";

interface Props {
  calculator: Calculator;
  evaluation: Evaluation;
  entries: Entries;
  around: Surroundings;
}

function sentence({ calculator, evaluation, entries, around }: Props): string {
  const { outcome, messages, trouble } = evaluation;
  if (!outcome) {
    const reason = Object.values(messages)
      .flat()
      .find(({ tone }) => tone === "invalid");
    return `Not current. ${trouble ?? reason?.says ?? ""}`;
  }
  const answer = answerOf(calculator, entries.choices);
  const value = answer && outcome.values[answer[0]];
  if (!answer || value === undefined) return "";
  const unit = unitOfResult(calculator, answer[0], entries, around.system);
  return `${answer[1].label}: ${writeQuantity(value, unit, barometerContext(around))}`;
}

/** The answer, or why there is none: one sentence, not every result. */
export const Spoken = (props: Props) => <Rested says={sentence(props)} />;

/** A sentence told to a screen reader once typing rests. */
export function Rested({ says }: { says: string }) {
  const [told, setTold] = useState("");
  const [first] = useState(says);
  useEffect(() => {
    if (told === "" && says === first) return;
    const timer = setTimeout(() => setTold(says), 800);
    return () => clearTimeout(timer);
  }, [says, told, first]);
  return (
    <p class="hidden" role="status">
      {told}
    </p>
  );
}
