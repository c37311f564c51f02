import type { UnitScaleProps } from "./types.ts";

/** One quantity in every unit of its kind, as a table. */
export function UnitScale({ caption, rows }: UnitScaleProps) {
  return (
    <table class="data">
      <caption>{caption}</caption>
      <tbody>
        {rows.map(({ unit, number }) => (
          <tr key={unit}>
            <th scope="row">{unit}</th>
            <td>{number}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
