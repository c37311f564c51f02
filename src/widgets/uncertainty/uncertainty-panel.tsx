import { useState } from "preact/hooks";
import { meanings, type PlusMinus, usual, ways } from "../../calculators/engine/plus-minus.ts";
import { listedResults } from "../../calculators/engine/shown.ts";
import { ChoiceRow, optionsOf } from "../choice.tsx";
import type { PanelProps } from "../later-fold.tsx";
import { BehindRows } from "./behind-rows.tsx";
import { Draws } from "./draws.tsx";
import { Pairs } from "./pairs.tsx";
import { toldOf } from "./told.ts";
import { ToldResults } from "./told-results.tsx";
import { ToldShares } from "./told-shares.tsx";

/** How uncertain the results are: what ± means, what each field brings, and draws where slopes are not trusted. */
export default function UncertaintyPanel({ calculator, running }: PanelProps) {
  const { entries, isStale } = running;
  const pm = entries.pm ?? usual;
  const [chosen, choose] = useState("");
  const told = toldOf(calculator, running, false);
  const change = (changes: Partial<PlusMinus>) => running.set({ ...entries, pm: { ...pm, ...changes } });
  const results = listedResults(calculator, entries.choices);
  const result = (results.find(([id]) => id === chosen) ?? results[0])?.[0] ?? "";
  const hasSome = Object.keys(told?.uncertain.readings ?? {}).length > 0;
  const of = told?.propagation?.results[result];
  const id = (part: string) => `${calculator.id}-pm-${part}`;
  return (
    <>
      <ChoiceRow
        id={id("means")}
        choice={{ label: "What stands behind ± in the fields is", options: meanings, start: "", help: "" }}
        value={pm.means}
        onChoose={(means) => change({ means: means as PlusMinus["means"] })}
      />
      <ChoiceRow
        id={id("shows")}
        choice={{ label: "What stands behind ± of results is", options: ways, start: "", help: "" }}
        value={pm.shows}
        onChoose={(shows) => change({ shows: shows as PlusMinus["shows"] })}
      />
      <BehindRows calculator={calculator} running={running} />
      <Pairs
        {...{ calculator, running, told }}
        together={pm.together}
        onChange={(together) => change({ together })}
      />
      {told && told.says !== "" && (
        <div class="is-invalid">
          <p class="msg" role="alert">
            {told.says}
          </p>
        </div>
      )}
      {isStale && <p class="msg">A field cannot be used as it stands. Once it can, this is told anew.</p>}
      {!isStale && told && !hasSome && (
        <p class="msg">
          No field holds a ± yet. Type one behind a number, as in 45 ± 2 °C, or fill one in above.
        </p>
      )}
      {!isStale && told && hasSome && told.propagation && (
        <>
          <ToldResults {...{ calculator, running, told }} />
          <ChoiceRow
            id={id("of")}
            choice={{
              label: "Where it comes from, of",
              options: optionsOf(results),
              start: "",
              help: "",
            }}
            value={result}
            onChoose={choose}
          />
          {of ? (
            <ToldShares {...{ calculator, running, told, result, of }} />
          ) : (
            <p class="msg">
              At this state no slope of it can be told: it has no value, or stands at an edge.
            </p>
          )}
        </>
      )}
      {!isStale && told && hasSome && told.says === "" && (
        <Draws uncertain={told.uncertain} {...{ calculator, running, result, of }} />
      )}
    </>
  );
}
