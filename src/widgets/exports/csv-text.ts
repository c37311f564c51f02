/** A text that a table of numbers could run as a formula begins with an apostrophe, which makes it a text there. */
const asText = (text: string): string => (/^[\s]*[=+\-−@\t\r]/.test(text) ? `'${text}` : text);

/** As RFC 4180 has it. */
const quoted = (cell: string): string =>
  /[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

export type Cell = string | number;

/** A number stays a number, whatever it begins with. */
const cellOf = (cell: Cell): string => (typeof cell === "number" ? String(cell) : quoted(asText(cell)));

/** Rows of cells as a file of comma-separated values. */
export const csvText = (lines: readonly (readonly Cell[])[]): string =>
  `${lines.map((line) => line.map(cellOf).join(",")).join("\r\n")}\r\n`;

/** A byte order mark, by which spreadsheets know the letters of a file. */
export const mark = "\ufeff";
