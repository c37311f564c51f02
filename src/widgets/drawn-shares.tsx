import { kinds } from "../../calc/quantity/kinds.ts";
import { fromSI } from "../../calc/quantity/units.ts";
import type { Picture, SharesPicture } from "../calculators/engine/calculator.ts";
import { barometerContext } from "../calculators/engine/entry.ts";
import type { State } from "./drawing.ts";
import { Shares } from "./pictures/Shares.tsx";
import type { Share } from "./pictures/types.ts";
import { shower } from "./shower.ts";
import { unitLabel } from "./unit-label.ts";

/** The parts of a sum, and the sum. */
export default function DrawnShares(props: { picture: Picture<string, string>; state: State }) {
  const { rows, sum, title, note } = props.picture as SharesPicture<string>;
  const { calculator, values, around } = props.state;
  const kindOf = (id: string) => {
    const kind = calculator.results[id]?.kind;
    if (!kind) throw new Error(`${calculator.id}: the picture of a sum names “${id}”, which is no result.`);
    return kind;
  };
  const kind = kindOf(sum.y);
  const unit = kinds[kind][around.system];
  const show = shower(kind, around);
  const share = ({ label, y }: { label: string; y: string }): Share => {
    if (kindOf(y) !== kind) throw new Error(`${calculator.id}: “${y}” is not of the kind of its sum.`);
    const value = values[y];
    return value === undefined
      ? { label, value: Number.NaN, number: "" }
      : { label, value: fromSI(value, unit, barometerContext(around)), number: show(value).number };
  };
  return (
    <Shares
      title={title}
      unit={unitLabel(unit)}
      rows={rows.map(share)}
      sum={share(sum)}
      {...(note && { note })}
    />
  );
}
