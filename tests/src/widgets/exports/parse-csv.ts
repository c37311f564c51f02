/** Reads a table as RFC 4180 has it: rows of cells. */
export function parseCsv(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  for (let found = cell.exec(text); found; found = cell.exec(text)) {
    const [, quoted, plain = "", end] = found;
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === ",") continue;
    rows.push(row);
    row = [];
    if (cell.lastIndex === text.length) return rows;
  }
  throw new Error(`no table from ${JSON.stringify(text.slice(0, 80))}`);
}
