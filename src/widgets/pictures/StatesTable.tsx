import type { StatesTableProps } from "./types.ts";

/** States as a table that scrolls inside itself; what each row is stays in sight. */
export function StatesTable({ title, columns, rows, note }: StatesTableProps) {
  const known = rows.filter(({ numbers }) => numbers.some((number) => number !== undefined));
  return (
    <>
      {known.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls has to take focus
        <section class="scroll" tabIndex={0} aria-label={title}>
          <table class="data states">
            <thead>
              <tr>
                <td />
                {columns.map((column) => (
                  <th scope="col" key={column}>
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {known.map(({ label, numbers }) => (
                <tr key={label}>
                  <th scope="row">{label}</th>
                  {columns.map((column, i) => (
                    <td key={column}>{numbers[i] ?? "—"}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {known.length === 0 && <p class="msg">There is nothing to list at this state.</p>}
      {note && <p class="msg">{note}</p>}
    </>
  );
}
