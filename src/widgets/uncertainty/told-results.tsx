import { kinds } from "../../../calc/quantity/kinds.ts";
import type { Propagated } from "../../../calc/uncertainty/propagate.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { barometerContext } from "../../calculators/engine/entry.ts";
import { usual } from "../../calculators/engine/plus-minus.ts";
import { listedResults } from "../../calculators/engine/shown.ts";
import { unitLabel } from "../unit-label.ts";
import type { Running } from "../use-calculator.ts";
import type { Told } from "./told.ts";
import { factorOf, toldWay, writeDifference, writeToPlace } from "./written.ts";

interface Props {
  calculator: Calculator;
  running: Running;
  told: Told;
}

/** Every listed result with its ±, and the field that was found where a result is held. */
export function ToldResults({ calculator, running, told: { propagation, uncertain } }: Props) {
  const { entries, around } = running;
  const { shows } = entries.pm ?? usual;
  const cells = ({ y, u }: Propagated, unit: string): readonly [string, string] => {
    const width = factorOf[shows] * u;
    const value = writeToPlace(y, width, unit, barometerContext(around));
    return [`${value}\u00a0${unitLabel(unit)}`.trim(), writeDifference(width, unit)];
  };
  const { held } = uncertain;
  const found = propagation?.found;
  const rows = listedResults(calculator, entries.choices).map(([id, { label, kind }]) => {
    const one = propagation?.results[id];
    const [value, width] = one ? cells(one, kinds[kind][around.system]) : ["", ""];
    return (
      <tr key={id}>
        <th scope="row">{label}</th>
        <td class="figure">{one ? value : "—"}</td>
        <td class="figure">{one ? `±\u00a0${width}` : "not told"}</td>
      </tr>
    );
  });
  const unitFound = held && entries.fields[held.input]?.shown;
  const foundCells = found && unitFound ? cells(found, unitFound) : null;
  return (
    <>
      {held && foundCells && (
        <p class="msg">
          “{calculator.inputs[held.input]?.label}” was found so that “{calculator.results[held.result]?.label}
          ” is as wanted: {foundCells[0]} ± {foundCells[1]} ({toldWay[shows]}). It follows what the other
          fields may be, and the results below follow it.
        </p>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
      <section class="scroll" tabIndex={0} aria-label="Results with their ±">
        <table class="data">
          <caption>Results with their ± ({toldWay[shows]}), to first order</caption>
          <thead>
            <tr>
              <th scope="col">Result</th>
              <th scope="col" class="figure">
                Value
              </th>
              <th scope="col" class="figure">
                ±
              </th>
            </tr>
          </thead>
          <tbody>{rows}</tbody>
        </table>
      </section>
    </>
  );
}
