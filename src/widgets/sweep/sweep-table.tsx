import { writeIn } from "../../../calc/quantity/write.ts";
import { unitLabel } from "../unit-label.ts";
import { type Drawn, nameOf, unitsOf } from "./shown-sweep.ts";
import { rowsOf } from "./sweep-rows.ts";

/** Every so many of the even places stand in the table, the ends among them. */
const EVERY = 4;

/** A sweep as a table. */
export function SweepTable({ drawn }: { drawn: Drawn }) {
  const { x, y, xUnit, yUnit, context } = unitsOf(drawn);
  const rows = rowsOf(drawn);
  const shown = rows.length > 2 * EVERY + 1 ? rows.filter((_, i) => i % EVERY === 0) : rows;
  const inUnit = (unit: string) => (unitLabel(unit) === "" ? "" : `, ${unitLabel(unit)}`);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls has to take focus
    <section class="scroll" tabIndex={0} aria-label={`${y.label} against ${x.label.toLowerCase()}`}>
      <table class="data">
        <thead>
          <tr>
            <th scope="col">
              {x.label}
              {inUnit(xUnit)}
            </th>
            {drawn.swept.curves.map((curve) => (
              <th scope="col" key={`${curve.result} ${curve.member}`}>
                {nameOf(drawn, curve) || y.label}
                {inUnit(yUnit)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map(({ x: at, ys }) => (
            <tr key={at}>
              <th scope="row">{writeIn(at, xUnit, context)}</th>
              {ys.map((value, i) => (
                <td key={i}>{value === undefined ? "—" : writeIn(value, yUnit, context)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
