import type { UnitScaleProps } from "./types.ts";

/** One quantity in every unit of its kind, as a table. */
export function UnitScale({ caption, rows }: UnitScaleProps) {
  return (
    <table class="data">
      <caption>{caption}</caption>
      <tbody>
        {rows.map(({ name, unit, number }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{number}</td>
            <td>{unit}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
