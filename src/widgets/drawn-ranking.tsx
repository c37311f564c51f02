import { kinds } from "../../calc/quantity/kinds.ts";
import { fromSI } from "../../calc/quantity/units.ts";
import type { Picture, RankingPicture } from "../calculators/engine/calculator.ts";
import { barometerContext } from "../calculators/engine/entry.ts";
import type { State } from "./drawing.ts";
import { layoutOf } from "./layout-of.ts";
import { Ranking } from "./pictures/Ranking.tsx";
import { shower } from "./shower.ts";
import { unitLabel } from "./unit-label.ts";

/** Outcomes of one kind, the best first. */
export default function DrawnRanking(props: { picture: Picture<string, string>; state: State }) {
  const { rows, title, note, best, chosen } = props.picture as RankingPicture<string>;
  const { calculator, given, values, around } = props.state;
  const marked = chosen?.(given);
  const [kind] = rows.map(({ y }) => calculator.results[y]?.kind);
  if (!kind) throw new Error(`${calculator.id}: the ranking names no result.`);
  const unit = kinds[kind][around.system];
  const show = shower(kind, around);
  return (
    <Ranking
      title={title}
      unit={unitLabel(unit)}
      rows={rows.map(({ label, y, arrangement }) => {
        const value = values[y];
        return {
          label,
          ...(value === undefined
            ? { value: Number.NaN, number: "" }
            : { value: fromSI(value, unit, barometerContext(around)), number: show(value).number }),
          ...(arrangement !== undefined && { layout: layoutOf(arrangement) }),
          isChosen: arrangement !== undefined && arrangement === marked,
        };
      })}
      {...(best && { best })}
      {...(note && { note })}
    />
  );
}
