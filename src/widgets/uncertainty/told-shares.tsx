import { kinds } from "../../../calc/quantity/kinds.ts";
import { differenceUnit } from "../../../calc/quantity/plus-minus.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import { writeNumber } from "../../../calc/quantity/write.ts";
import type { Propagated } from "../../../calc/uncertainty/propagate.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { usual } from "../../calculators/engine/plus-minus.ts";
import { Shares } from "../pictures/Shares.tsx";
import type { Running } from "../use-calculator.ts";
import { nameOf, unitOfReading } from "./names.ts";
import type { Told } from "./told.ts";
import { differenceLabel, factorOf, toldWay, writeDifference } from "./written.ts";

interface Props {
  calculator: Calculator;
  running: Running;
  told: Told;
  /** The id of a result, and what is told of it. */
  result: string;
  of: Propagated;
}

const perCent = (part: number) => ({ value: 100 * part, number: writeNumber(100 * part, 3) });

/** What each reading brings to the uncertainty of one result: as bars, and how far the result goes with each. */
export function ToldShares({ calculator, running, told, result, of }: Props) {
  const { entries, around } = running;
  const { shows } = entries.pm ?? usual;
  const { label, kind } = calculator.results[result] ?? { label: "", kind: "ratio" };
  const unit = kinds[kind][around.system];
  const { readings } = told.uncertain;
  const ids = Object.keys(readings).sort((a, b) => (of.share[b] ?? 0) - (of.share[a] ?? 0));
  const name = (id: string) => nameOf(calculator, entries, id);
  const one = (id: string) => {
    const shown = differenceUnit(unitOf(unitOfReading(entries, around, id)));
    const { factor } = unitOf(shown);
    const change = (of.sensitivity[id] ?? 0) * factor;
    const more = differenceLabel(shown) === "" ? "1 more" : `1\u00a0${differenceLabel(shown)} more`;
    const sign = change > 0 ? "+" : "";
    return `${more} gives ${sign}${writeDifference(change, unit, 3)}`;
  };
  if (of.u === 0) return <p class="msg">None of the ± moves “{label}”.</p>;
  return (
    <>
      <Shares
        title={`Shares of the variance of “${label}”`}
        unit="%"
        rows={[
          ...ids.map((id) => ({ label: name(id), ...perCent(of.share[id] ?? 0) })),
          ...(of.sharedShare === 0 ? [] : [{ label: "Errors that go together", ...perCent(of.sharedShare) }]),
        ]}
        sum={{ label: "All together", ...perCent(1) }}
        note="Shares are of u², the square of the standard uncertainty: what is halved there falls to a quarter."
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
      <section class="scroll" tabIndex={0} aria-label={`How “${label}” goes with each`}>
        <table class="data">
          <caption>How “{label}” goes with each</caption>
          <thead>
            <tr>
              <th scope="col">Field</th>
              <th scope="col">Its ± ({toldWay[shows]})</th>
              <th scope="col">Slope</th>
            </tr>
          </thead>
          <tbody>
            {ids.map((id) => (
              <tr key={id}>
                <th scope="row">{name(id)}</th>
                <td class="figure">
                  {writeDifference(
                    factorOf[shows] * (readings[id]?.u ?? 0),
                    unitOfReading(entries, around, id),
                  )}
                </td>
                <td>{one(id)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
