import type { Picture, StatesPicture } from "../calculators/engine/calculator.ts";
import type { State } from "./drawing.ts";
import { StatesTable } from "./pictures/StatesTable.tsx";
import { together } from "./pictures/text.ts";
import { shower } from "./shower.ts";

/** States in rows, each number as results are written. */
export default function DrawnStates(props: { picture: Picture<string, string>; state: State }) {
  const { columns, rows, title, note } = props.picture as StatesPicture<string>;
  const { calculator, values, around } = props.state;
  const shown = rows.map(({ label, values: ids }) => ({
    label,
    cells: columns.map((_, i) => {
      const id = ids[i] ?? "";
      const kind = calculator.results[id]?.kind;
      if (!kind) throw new Error(`${calculator.id}: the row “${label}” names “${id}”, which is no result.`);
      const value = values[id];
      const show = shower(kind, around);
      return { unit: show(0).unit, shown: value === undefined ? undefined : show(value) };
    }),
  }));
  // Where the quantities of a column differ in their unit, it stands at each number.
  const units = columns.map((_, i) => {
    const [unit, ...others] = new Set(
      shown.flatMap(({ cells }) => (cells.some(({ shown }) => shown) ? [cells[i]?.unit] : [])),
    );
    return others.length === 0 ? unit : undefined;
  });
  return (
    <StatesTable
      title={title}
      columns={columns.map((column, i) => (units[i] ? `${column}, ${units[i]}` : column))}
      rows={shown.map(({ label, cells }) => ({
        label,
        numbers: cells.map(
          ({ shown }, i) => shown && (units[i] === undefined ? together(shown) : shown.number),
        ),
      }))}
      {...(note && { note })}
    />
  );
}
